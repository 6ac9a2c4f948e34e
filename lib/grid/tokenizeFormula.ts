export type FormulaToken =
  | { readonly kind: 'name'; readonly text: string; readonly at: number }
  | { readonly kind: 'function'; readonly text: string; readonly at: number }
  | { readonly kind: 'number'; readonly text: string; readonly at: number }
  | { readonly kind: 'sign'; readonly text: string; readonly at: number }
  | { readonly kind: 'unknown'; readonly text: string; readonly at: number };

const pattern =
  /(?<space>\s+)|(?<number>\d+(?:\.\d+)?(?:[eE][+-]?\d+)?|\.\d+)|(?<name>[A-Za-z_][A-Za-z0-9_.]*)|(?<sign><=|>=|<>|[-+*/^%();=<>])|(?<unknown>[\s\S])/gu;

/**
 * Splits a formula into its words. A name followed by an opening bracket is a function.
 *
 * @param formula OpenFormula text without a leading equals sign
 * @returns tokens in order, each with its place in the text, counted from 0; spaces are dropped
 */
export function tokenizeFormula(formula: string): readonly FormulaToken[] {
  const tokens: FormulaToken[] = [];
  for (const match of formula.matchAll(pattern)) {
    const { number, name, sign, unknown } = match.groups ?? {};
    const at = match.index;
    if (number !== undefined) tokens.push({ kind: 'number', text: number, at });
    else if (name !== undefined) {
      const called = /^\s*\(/.test(formula.slice(at + name.length));
      tokens.push({ kind: called ? 'function' : 'name', text: name, at });
    } else if (sign !== undefined) tokens.push({ kind: 'sign', text: sign, at });
    else if (unknown !== undefined) tokens.push({ kind: 'unknown', text: unknown, at });
  }
  return tokens;
}

/** Ids of the rows a formula reads. */
export const namesIn = (formula: string): readonly string[] => [
  ...new Set(
    tokenizeFormula(formula)
      .filter((token) => token.kind === 'name')
      .map((token) => token.text),
  ),
];

/**
 * Writes the words of a formula as one text again. Two words that no sign parts stay apart: 1 0 must not turn into
 * ten, nor 2 sheets into a cell.
 *
 * @param wordOf what is written for a token, its own text unless told
 */
export function joinTokens(
  tokens: readonly FormulaToken[],
  wordOf: (token: FormulaToken) => string = ({ text }) => text,
): string {
  return tokens
    .map((token, index) => {
      const before = tokens[index - 1];
      const apart = before !== undefined && isWord(before) && isWord(token);
      return `${apart ? ' ' : ''}${wordOf(token)}`;
    })
    .join('');
}

const isWord = ({ kind }: FormulaToken): boolean => kind !== 'sign';
