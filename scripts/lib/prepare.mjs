import { build, buildIsReady } from './build.mjs';
import { dependenciesAreReady, installDependencies } from './dependencies.mjs';
import { oneAtATime } from './one-at-a-time.mjs';

export async function prepareDependencies() {
  if (dependenciesAreReady()) return;
  await oneAtATime(async () => {
    if (!dependenciesAreReady()) await installDependencies();
  });
}

export async function prepareBuild() {
  if (buildIsReady()) return;
  await oneAtATime(async () => {
    if (!buildIsReady()) await build();
  });
}
