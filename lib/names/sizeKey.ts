/** What a size's name says, so that two spellings of one size are the same. */
export type SizeKey =
  /** M is 0, L is 1, XL is 2, 2XL is 3; S is -1, XS is -2. */
  | { readonly kind: 'letters'; readonly forYouth: boolean; readonly rank: number }
  | { readonly kind: 'number'; readonly unit: string; readonly rank: number }
  | { readonly kind: 'word'; readonly word: string };

/**
 * @param text a size as somebody wrote it
 * @example sizeKey('XX-Large') // the same as sizeKey('2XL')
 */
export function sizeKey(text: string): SizeKey {
  const plain = plainSize(text);
  const forYouth = YOUTH.test(plain);
  const rank = letterRank(forYouth ? plain.replace(YOUTH, '') : plain);
  if (rank !== null) return { kind: 'letters', forYouth, rank };
  const [, figure, unit = ''] = NUMBER.exec(plain) ?? [];
  if (figure !== undefined) return { kind: 'number', unit, rank: Number(figure) };
  return { kind: 'word', word: ONE_SIZE.has(plain) ? 'onesize' : plain };
}

/** @returns one text for all spellings of a size. */
export function sizeKeyText(text: string): string {
  const key = sizeKey(text);
  if (key.kind === 'letters') return `${key.forYouth ? 'youth ' : ''}letters ${key.rank}`;
  return key.kind === 'number' ? `number ${key.rank} ${key.unit}` : `word ${key.word}`;
}

// Helpers

const NUMBER = /^(\d+(?:\.\d+)?)([a-z]*)$/;
/** Spellings of order lists, common practice. */
const YOUTH = /^(?:youths?|kids?|childrens?|child|juniors?|jr|y)(?=[\dxsml])/;
const ONE_SIZE: ReadonlySet<string> = new Set(['onesize', 'onesizefitsall', 'os', 'osfa', 'unisize']);
/** Letters of other scripts that look like those of sizes and are typed for them. */
const LOOKALIKES: Readonly<Record<string, string>> = { м: 'm', х: 'x', μ: 'm', χ: 'x' };

/** Spaces, dots and dashes say nothing, but for those between figures. */
const plainSize = (text: string): string =>
  text
    .normalize('NFKC')
    .trim()
    .toLowerCase()
    .replace(/[мхμχ]/g, (sign) => LOOKALIKES[sign] ?? sign)
    .replace(/(\d)\s*,\s*(?=\d)/g, '$1.')
    .replace(/(\d)\s*[-–—/]\s*(?=\d)/g, '$1/')
    .replace(/[\s_\-–—'"’]+/g, '')
    .replace(/\.(?!\d)/g, '');

function letterRank(plain: string): number | null {
  const short = plain
    .replace(/extra/g, 'x')
    .replace(/^double(?=x)/, '2')
    .replace(/^triple(?=x)/, '3')
    .replace(/(?:small|sm)$/, 's')
    .replace(/(?:medium|med|md)$/, 'm')
    .replace(/(?:large|lrg|lg)$/, 'l');
  const [match, count, xs = '', letter] = /^(\d{1,2})?(x*)([sml])?$/.exec(short) ?? [];
  if (match === undefined) return null;
  // “2X” leaves the L away; “2L” may be two of L, and is no size by itself.
  if (count !== undefined && xs.length !== 1) return null;
  if (letter === undefined) return count === undefined ? null : 1 + Number(count);
  const away = count === undefined ? xs.length : Number(count);
  if (letter === 'm') return away === 0 ? 0 : null;
  return letter === 's' ? -1 - away : 1 + away;
}
