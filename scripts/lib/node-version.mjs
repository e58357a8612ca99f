const needed = [20, 19];

/** Ends with a sentence on an older Node; it would fail later with a puzzling one. */
export function requireNode() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major > needed[0] || (major === needed[0] && minor >= needed[1])) return;
  console.error(
    `Rillbook needs Node.js ${needed.join('.')} or newer; this is ${process.versions.node}. ` +
      'Install a newer one and run the command again.',
  );
  process.exit(1);
}
