/**
 * @typedef {{ regex: string, headers: readonly { key: string, value: string }[] }} HeaderRule
 */

/**
 * The headers that the built app sends with an address, as next.config.ts has them: of two rules the later one holds.
 *
 * @param {readonly HeaderRule[]} rules of the build's routes-manifest.json
 * @param {string} path
 * @returns {readonly (readonly [string, string])[]}
 */
export function builtHeaders(rules, path) {
  const found = rules.filter(({ regex }) => new RegExp(regex).test(path)).flatMap((rule) => rule.headers);
  return [...new Map(found.map(({ key, value }) => [key, value]))];
}
