/** Letters that an id of an own row has room for after its beginning. */
const LONGEST = 31;

/**
 * The name by which formulas call an own row, made from its label.
 *
 * @param taken ids that are in use already
 * @example ownRowId('Pattern fee', []) // 'own_pattern_fee'
 */
export function ownRowId(label: string, taken: readonly string[]): string {
  const plain = label
    .normalize('NFD')
    .toLowerCase()
    .replace(/\p{Mark}/gu, '')
    .replace(/[^a-z0-9]+/g, '_')
    // An id begins with a letter; a label of figures or of another script has none to give.
    .replace(/^[^a-z]+|_+$/g, '')
    .slice(0, LONGEST - 3)
    .replace(/_+$/, '');
  const base = `own_${plain === '' ? 'row' : plain}`;
  if (!taken.includes(base)) return base;
  for (let number = 2; ; number += 1) {
    const numbered = `${base}_${number}`;
    if (!taken.includes(numbered)) return numbered;
  }
}
