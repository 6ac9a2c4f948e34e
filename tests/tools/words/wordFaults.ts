/** Things that are counted on the screens. */
const counted =
  'pieces|sheets|shirts|mugs|bags|panels|tiles|mats|tumblers|cushions|prices|jobs|items|lines|tests|presses|prints|sizes|minutes|hours|days|weeks|spares|stops|cautions|notes|things|blanks|breaks|pages|copies|runs|places|names|kinds|orders|designs|entries|fields|steps|sessions|customers|files|records|documents|rolls|times(?! the)|letters|colours|fibres|layers|points|percent points|gaps|prints|marks|others|versions|refills';

/** Vowels that are spoken as consonants, and letters and figures that are spoken as vowels. */
const spokenAsConsonant = 'uni|use|usu|Euro|euro|one|once|U[A-Z]|u\\b';
const spokenAsVowel = 'hour|honest|8|11\\b|18\\b|[AEFHILMNORSX]\\b|[AEFHILMNORSX][A-Z0-9]';

const faults: readonly (readonly [string, RegExp])[] = [
  ['several of one', new RegExp(`(?<![\\d.,−–-])1 (?:${counted})\\b`, 'u')],
  [
    'one that does as several do',
    /(?<![\d.,−–-])1 (?!there\b)\p{Ll}+(?: \p{Ll}+)? (?:pay|are|have|leave|hold|stand|lose|take|need|were|do)\b/u,
  ],
  ['a before a vowel', new RegExp(`(?<!\\d )\\b[Aa] (?!${spokenAsConsonant})(?:[aeiouAEIOU]\\w)`, 'u')],
  ['an before a consonant', new RegExp(`\\b[Aa]n (?!${spokenAsVowel}|[aeiouAEIOU“])`, 'u')],
  ['a plural nobody says', /(?:ss|x|ch|sh)s\b/u],
  ['a gap', /undefined|\bnull\b|NaN|Infinity|\[object|[{}]|\S\s{2,}\S|“”|\(\)/u],
];

/** @returns what is wrong with a text as words, each with where it stands; nothing where all is well. */
export const wordFaults = (text: string): readonly string[] =>
  faults.flatMap(([name, pattern]) => {
    const found = pattern.exec(text);
    return found === null
      ? []
      : [`${name}: “${text.slice(Math.max(0, found.index - 30), found.index + 40)}”`];
  });
