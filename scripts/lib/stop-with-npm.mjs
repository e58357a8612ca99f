/**
 * Ends this process in order when the npm that runs it is gone: a killed npm passes no signal on, and nor
 * does a shell between the two that took it for itself. The service would run on with nobody to stop it.
 */
export function stopWithNpm() {
  if (process.env.npm_lifecycle_event === undefined) return;
  const parent = process.ppid;
  const watch = setInterval(() => {
    if (process.ppid === parent) return;
    clearInterval(watch);
    process.kill(process.pid, 'SIGTERM');
  }, 500);
  watch.unref();
}
