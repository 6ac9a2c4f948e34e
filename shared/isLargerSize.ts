const LETTERS = ['S', 'M', 'L'];

/**
 * Whether one size is known to be larger than another: letters (XS, S … 3XL, XXXL), or numbers of one unit (11 oz and
 * 15 oz). Names of other kinds say nothing, and sizes of different kinds are not compared.
 */
export function isLargerSize(one: string, other: string): boolean {
  const [a, b] = [rankOf(one), rankOf(other)];
  return a !== null && b !== null && a.kind === b.kind && a.rank > b.rank;
}

interface Rank {
  readonly kind: string;
  readonly rank: number;
}

function rankOf(name: string): Rank | null {
  const text = name.trim().toUpperCase();
  const letters = /^(\d{1,2})?(X*)(S|M|L)$/.exec(text);
  if (letters !== null) {
    const [, count, xs = '', letter = ''] = letters;
    const extra = count === undefined ? xs.length : Number(count) * Math.max(1, xs.length);
    if (letter === 'M' && extra > 0) return null;
    const away = letter === 'S' ? -extra : extra;
    return { kind: 'letters', rank: LETTERS.indexOf(letter) + away };
  }
  const number = /^(\d+(?:\.\d+)?)\s*(\D*)$/.exec(text);
  return number === null ? null : { kind: `number ${(number[2] ?? '').trim()}`, rank: Number(number[1]) };
}
