import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

const SRC = path.resolve(import.meta.dirname, '../../src');

interface Import {
  readonly from: string;
  readonly to: string;
  readonly typeOnly: boolean;
}

/** All imports of the sources; files of ours as paths below src, packages by their name. */
function readImports(): Import[] {
  const files = readdirSync(SRC, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.ts'));
  return files.flatMap((from) => {
    const text = readFileSync(path.join(SRC, from), 'utf8');
    return [...text.matchAll(/^(?:import|export)\s+(type\s)?(?:[^'";]*?\sfrom\s+)?'([^']+)';|\bimport\('([^']+)'\)/gms)].map(([, typeOnly, first, later]) => [typeOnly, first ?? later ?? ''] as const).map(([typeOnly, target]) => ({
      from,
      to: target.startsWith('.') ? path.normalize(path.join(path.dirname(from), target)).replace(/\.js$/, '.ts') : target,
      typeOnly: typeOnly !== undefined,
    }));
  });
}

const imports = readImports();
const layerOf = (file: string): string => file.split(path.sep)[0] ?? '';
const sliceOf = (file: string): string | null => (layerOf(file) === 'features' ? (file.split(path.sep)[1] ?? null) : null);
const show = ({ from, to }: Import): string => `${from} → ${to}`;

describe('imports', () => {
  it('sees the sources', () => {
    expect(imports.length).toBeGreaterThan(300);
    expect(imports.map(show)).toEqual(expect.arrayContaining(['main.ts → run-service.ts', 'run-service.ts → application.ts']));
  });

  it('keep the domain free of everything but itself and numeric libraries', () => {
    const allowed = ['decimal.js', 'delaunator', 'robust-predicates'];
    expect(imports.filter(({ from, to }) => layerOf(from) === 'domain' && layerOf(to) !== 'domain' && !allowed.includes(to)).map(show)).toEqual([]);
  });

  it('keep the platform free of business', () => {
    expect(imports.filter(({ from, to }) => layerOf(from) === 'platform' && layerOf(to) === 'features').map(show)).toEqual([]);
  });

  it('reach another slice only through its index', () => {
    const through = imports.filter(({ from, to }) => sliceOf(to) !== null && sliceOf(from) !== sliceOf(to) && path.basename(to) !== 'index.ts');
    expect(through.map(show)).toEqual([]);
  });

  it('leave TypeORM to repositories, services and entities, and the driver to the platform', () => {
    const users = imports.filter(({ from, to }) => layerOf(from) === 'features' && ['typeorm', 'pg'].includes(to));
    const allowed = /\.(entity|repository|service)\.ts$/;
    expect(users.filter(({ from }) => !allowed.test(from)).map(show)).toEqual([]);
  });

  it('form no circle between slices', () => {
    const next = new Map<string, Set<string>>();
    for (const { from, to } of imports) {
      const [a, b] = [sliceOf(from), sliceOf(to)];
      if (a !== null && b !== null && a !== b) next.set(a, (next.get(a) ?? new Set()).add(b));
    }
    expect(circleIn(next)).toBeNull();
  });

  it('form no circle between files', () => {
    const next = new Map<string, Set<string>>();
    for (const { from, to, typeOnly } of imports) if (to.endsWith('.ts') && !typeOnly) next.set(from, (next.get(from) ?? new Set()).add(to));
    expect(circleIn(next)).toBeNull();
  });
});

/** Some circle of a graph, or null. */
function circleIn(next: ReadonlyMap<string, ReadonlySet<string>>): string[] | null {
  const done = new Set<string>();
  const visit = (node: string, trail: string[]): string[] | null => {
    if (trail.includes(node)) return [...trail.slice(trail.indexOf(node)), node];
    if (done.has(node)) return null;
    for (const other of next.get(node) ?? []) {
      const circle = visit(other, [...trail, node]);
      if (circle !== null) return circle;
    }
    done.add(node);
    return null;
  };
  for (const node of next.keys()) {
    const circle = visit(node, []);
    if (circle !== null) return circle;
  }
  return null;
}
