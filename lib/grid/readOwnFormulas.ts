import { MOST_PLACEMENTS } from '@/shared/schemas/job';
import type { OwnRow } from '@/shared/schemas/ownRow';
import { allowedFunctions } from './allowedFunctions';
import { isReadableFormula } from './engine';
import { expandRows, type GridRows } from './expandRows';
import { type CommaProblem, readCommas, withPoints } from './readCommas';
import type { RowTable } from './rowTypes';
import { type FormulaToken, joinTokens, namesIn, tokenizeFormula } from './tokenizeFormula';

export type FormulaProblem =
  | { readonly kind: 'unknownName'; readonly rowId: string; readonly name: string; readonly at: number }
  | { readonly kind: 'unknownFunction'; readonly rowId: string; readonly name: string; readonly at: number }
  | { readonly kind: 'badSign'; readonly rowId: string; readonly text: string; readonly at: number }
  | (CommaProblem & {
      readonly rowId: string;
      /** The formula with points, where it can be read then. */
      readonly mended: string | null;
    })
  | { readonly kind: 'unreadable'; readonly rowId: string; readonly at: number }
  | { readonly kind: 'tooDeep'; readonly rowId: string; readonly at: number }
  | { readonly kind: 'circle'; readonly rowId: string; readonly names: readonly string[] };

/**
 * Brackets inside brackets. The engine goes a long way down at each of them: half the room that a thread has in a
 * browser is used up at 65. Tiers of IF need one for each tier.
 */
export const MOST_NESTED = 20;

/**
 * Looks through the maker's own formulas before they reach the engine: every name must be a row or a rate,
 * every function one that is allowed, brackets must close and not be nested without end, and no formula may lead back to itself.
 *
 * @param placements rows of so many placements may be named
 * @returns every problem found, with the place in the text counted from 0; none when all can be used
 */
export function readOwnFormulas(
  ownRows: readonly OwnRow[],
  placements = MOST_PLACEMENTS,
): readonly FormulaProblem[] {
  // Amounts by driver cannot be misread, and most jobs have nothing else.
  if (!ownRows.some(({ cost }) => cost.kind === 'formula')) return [];
  const rows = expandRows({ placements, presses: 1, ownRows });
  const problems = ownRows.flatMap((row) =>
    row.cost.kind === 'formula' ? readOne(row.id, row.cost.formula, rows) : [],
  );
  return problems.length > 0 ? problems : circles(ownRows, rows);
}

type PlacedProblem = Exclude<FormulaProblem, { kind: 'circle' }>;

function readOne(rowId: string, formula: string, rows: GridRows): readonly PlacedProblem[] {
  const tokens = tokenizeFormula(formula);
  const commas = readCommas(formula, tokens);
  const problems = [
    ...withMended(commas, rowId, formula, rows),
    ...tokens.flatMap((token) => judge(rowId, token, rows)),
  ].sort((a, b) => a.at - b.at);
  if (problems.length > 0) return problems;
  const deep = tooDeepAt(tokens);
  if (deep !== null) return [{ kind: 'tooDeep', rowId, at: deep }];
  // Whether the words make a sentence is the engine's to say; names stand for numbers here.
  const bare = joinTokens(tokens, (token) => (token.kind === 'name' ? '1' : token.text));
  return isReadableFormula(`=${bare}`) ? [] : [{ kind: 'unreadable', rowId, at: brokenAt(tokens, formula) }];
}

/** A formula is mended by points only where nothing else is wrong with it. */
function withMended(commas: readonly CommaProblem[], rowId: string, formula: string, rows: GridRows) {
  const pointed = withPoints(formula, commas);
  const mended = pointed !== formula && readOne(rowId, pointed, rows).length === 0 ? pointed : null;
  return commas.map((problem) => ({ ...problem, rowId, mended }));
}

function judge(rowId: string, token: FormulaToken, rows: GridRows): readonly PlacedProblem[] {
  const readable: readonly RowTable[] = ['job', 'line', 'case'];
  switch (token.kind) {
    case 'name': {
      const row = rows.byId.get(token.text);
      if (row !== undefined && readable.includes(row.table)) return [];
      return [{ kind: 'unknownName', rowId, name: token.text, at: token.at }];
    }
    case 'function':
      if (allowedFunctions.includes(token.text.toUpperCase())) return [];
      return [{ kind: 'unknownFunction', rowId, name: token.text, at: token.at }];
    case 'unknown':
      if (token.text === ',') return [];
      return [{ kind: 'badSign', rowId, text: token.text, at: token.at }];
    case 'number':
    case 'sign':
      return [];
    default:
      return token satisfies never;
  }
}

/** The bracket that is one too many inside others, or null. */
function tooDeepAt(tokens: readonly FormulaToken[]): number | null {
  let open = 0;
  for (const { text, at } of tokens) {
    if (text === '(') open += 1;
    if (text === ')') open -= 1;
    if (open > MOST_NESTED) return at;
  }
  return null;
}

/** The first place where brackets or neighbours cannot be right; the end where none is found. */
function brokenAt(tokens: readonly FormulaToken[], formula: string): number {
  let open = 0;
  let before: FormulaToken | undefined;
  for (const token of tokens) {
    if (token.text === '(') open += 1;
    if (token.text === ')') open -= 1;
    if (open < 0) return token.at;
    if (before !== undefined && endsValue(before) && startsValue(token)) return token.at;
    if (before !== undefined && isBinary(before) && (/^[*/^;)]$/.test(token.text) || token.text === '='))
      return token.at;
    before = token;
  }
  return formula.length;
}

const startsValue = (token: FormulaToken): boolean => token.kind !== 'sign' || token.text === '(';

const endsValue = (token: FormulaToken): boolean =>
  token.kind === 'name' || token.kind === 'number' || token.text === ')' || token.text === '%';

const isBinary = (token: FormulaToken): boolean => token.kind === 'sign' && /^[-+*/^(;=<>]/.test(token.text);

function circles(ownRows: readonly OwnRow[], rows: GridRows): readonly FormulaProblem[] {
  return ownRows.flatMap((row) => {
    const path = wayBack(row.id, rows);
    return path === null ? [] : [{ kind: 'circle', rowId: row.id, names: path } as const];
  });
}

/** The shortest chain of rows from a row back to itself, or null. */
function wayBack(start: string, rows: GridRows): readonly string[] | null {
  const seen = new Set<string>();
  const waiting: (readonly string[])[] = [[start]];
  for (let path = waiting.shift(); path !== undefined; path = waiting.shift()) {
    const last = rows.byId.get(path[path.length - 1] ?? '');
    for (const name of last?.formula == null ? [] : namesIn(last.formula)) {
      if (name === start) return [...path, start];
      if (seen.has(name)) continue;
      seen.add(name);
      waiting.push([...path, name]);
    }
  }
  return null;
}
