import type { FormulaToken } from './tokenizeFormula';

/**
 * A comma in a formula. OpenFormula parts decimals by a point and values by a semicolon, wherever it is read; a comma
 * has no meaning, and what was meant by it is told instead.
 */
export type CommaProblem =
  /** One number with its decimals behind a comma; `instead` is how it is written. */
  | { readonly kind: 'decimalComma'; readonly at: number; readonly text: string; readonly instead: string }
  /** It can be read in two ways, each written without a comma. */
  | {
      readonly kind: 'unclearComma';
      readonly at: number;
      readonly text: string;
      readonly instead: string;
      readonly other: string;
    }
  | { readonly kind: 'comma'; readonly at: number };

/** Digits with marks between them, such as 0,5 or 1.000,5. */
const marked = /^\d+(?:[.,]\d+)+/;

/**
 * Finds every comma of a formula and what it may have been meant for.
 *
 * @param tokens of that formula
 * @returns problems in the order of the text
 */
export function readCommas(formula: string, tokens: readonly FormulaToken[]): readonly CommaProblem[] {
  const found: CommaProblem[] = [];
  const levels: Level[] = [{ isCall: false, parted: false }];
  let end = 0;
  for (const [index, { kind, text, at }] of tokens.entries()) {
    if (text === '(') levels.push(levelFrom(tokens, index));
    if (text === ')' && levels.length > 1) levels.pop();
    if (at < end) continue;
    const run = kind === 'number' ? (marked.exec(formula.slice(at))?.[0] ?? '') : '';
    if (run.includes(',')) {
      found.push(meant(run, at, levels.at(-1)));
      end = at + run.length;
    } else if (text === ',') found.push({ kind: 'comma', at });
  }
  return found;
}

/** @returns the formula with every number that has one meaning written with a point. */
export function withPoints(formula: string, problems: readonly CommaProblem[]): string {
  return problems
    .toReversed()
    .reduce(
      (text, problem) =>
        problem.kind === 'decimalComma'
          ? `${text.slice(0, problem.at)}${problem.instead}${text.slice(problem.at + problem.text.length)}`
          : text,
      formula,
    );
}

// Helpers

/** Inside these brackets: whether they hold the values of a function, and whether a semicolon parts those. */
interface Level {
  readonly isCall: boolean;
  readonly parted: boolean;
}

function levelFrom(tokens: readonly FormulaToken[], open: number): Level {
  let depth = 0;
  let parted = false;
  for (const { text } of tokens.slice(open)) {
    if (text === '(') depth += 1;
    if (text === ')') depth -= 1;
    if (depth === 0) break;
    if (depth === 1 && text === ';') parted = true;
  }
  return { isCall: tokens[open - 1]?.kind === 'function', parted };
}

function meant(text: string, at: number, level: Level | undefined): CommaProblem {
  const one = asOneNumber(text);
  const [instead, other] = one;
  if (level?.isCall === true && !level.parted) {
    const parts = text.replaceAll(',', '; ');
    // Marks that make no number leave the values of a function.
    return instead === undefined
      ? { kind: 'comma', at: at + text.indexOf(',') }
      : { kind: 'unclearComma', at, text, instead, other: parts };
  }
  if (instead === undefined) return { kind: 'comma', at: at + text.indexOf(',') };
  return other === undefined
    ? { kind: 'decimalComma', at, text, instead }
    : { kind: 'unclearComma', at, text, instead, other };
}

/** The numbers that a text with commas can stand for, written with a point: none, one or two. */
function asOneNumber(text: string): readonly string[] {
  const last = text.search(/[.,]\d+$/);
  const isGroup = text[last] === ',';
  const whole = text.slice(0, last);
  const decimals = text.slice(last + 1);
  if (!/[.,]/.test(whole)) {
    // 1,500 is one and a half here and fifteen hundred there.
    const isThousands = /^[1-9]\d{0,2}$/.test(whole) && decimals.length === 3;
    const plain = `${whole}.${decimals}`;
    return isThousands ? [plain, `${whole}${decimals}`] : [plain];
  }
  const inner = isGroup ? '.' : ',';
  if (grouped(whole, inner)) return [`${whole.replaceAll(inner, '')}.${decimals}`];
  return grouped(text, ',') ? [text.replaceAll(',', '')] : [];
}

const grouped = (text: string, mark: string): boolean =>
  (mark === ',' ? /^\d{1,3}(?:,\d{3})+$/ : /^\d{1,3}(?:\.\d{3})+$/).test(text);
