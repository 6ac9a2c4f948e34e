/**
 * Why this Node cannot run the project, as a sentence for the terminal.
 *
 * @param {string} version such as `20.19.0` or `v20.19.0`
 * @param {string} range the `engines.node` of package.json; only the form `>=20.19` is read
 * @returns {string | undefined} nothing when the version will do
 */
export function nodeProblem(version, range) {
  const least = parts(range.replace(/^>=/, ''));
  const have = parts(version.replace(/^v/, ''));
  const first = least.findIndex((part, place) => part !== (have[place] ?? 0));
  if (first === -1 || (have[first] ?? 0) > (least[first] ?? 0)) return undefined;
  return `Node ${least.join('.')} or newer is needed, and this is Node ${have.join('.')}. Install a newer Node and run the command again.`;
}

/** @param {string} text */
function parts(text) {
  return text.split('.').map(Number);
}
