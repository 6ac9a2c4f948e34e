import { decideCondition } from '@/lib/grid/decideCondition';
import { type Expression, pairSigns, readExpression } from '@/lib/grid/readExpression';
import type { TracePart } from '@/lib/grid/traceFigure';
import { callWords } from './callWords';
import { bracketed, type Phrase, words } from './phrase';

/** One summand of a formula; the first has no sign. */
export interface Term {
  readonly sign: '' | '+';
  readonly phrases: readonly Phrase[];
}

/**
 * A formula in words: × ÷ −, “rounded up” for ROUNDUP; of an IF the branch that was taken, and why; brackets only
 * where they are needed. Summands stand apart, so that a long sum can be read as a list.
 */
export function formulaWords(parts: readonly TracePart[]): readonly Term[] {
  const read = readExpression(parts);
  return read === null ? [{ sign: '', phrases: asWritten(parts) }] : termsOf(read);
}

// Helpers

type Pair = Extract<Expression, { kind: 'pair' }>;
type Call = Extract<Expression, { kind: 'call' }>;

function termsOf(from: Expression): readonly Term[] {
  const summands = summandsOf(from);
  if (summands.length === 1) return [{ sign: '', phrases: phrasesOf(from) }];
  return summands.map((one, index) => ({ sign: index === 0 ? '' : '+', phrases: inner(one, 2) }));
}

const summandsOf = (from: Expression): readonly Expression[] =>
  from.kind === 'pair' && from.sign === '+' ? [...summandsOf(from.left), ...summandsOf(from.right)] : [from];

function phrasesOf(from: Expression): readonly Phrase[] {
  switch (from.kind) {
    case 'operand':
      return [{ kind: 'chip', part: from.part }];
    case 'number':
      return [{ kind: 'number', value: Number(from.text) }];
    case 'lead':
      return [words(signWords[from.sign] ?? from.sign), ...inner(from.of, 3)];
    case 'percent':
      return [...inner(from.of, 4), words('per cent')];
    case 'pair':
      return pairWords(from);
    case 'call':
      return takenBranch(from) ?? callWords(from.name, from.of.map(argument));
    default:
      return from satisfies never;
  }
}

function pairWords(from: Pair): readonly Phrase[] {
  const { sign, left, right } = from;
  // “Taken alone: yes” is already a sentence; “= 1” after it would only puzzle.
  if (isYes(from)) return phrasesOf(left);
  const level = levelOf(sign);
  const tightRight = sign === '-' || sign === '/' || sign === '^';
  return [
    ...inner(left, level),
    words(signWords[sign] ?? sign),
    ...inner(right, tightRight ? level + 1 : level),
  ];
}

/** In brackets where it binds more loosely than what is around it. */
function inner(from: Expression, level: number): readonly Phrase[] {
  const loose = from.kind === 'call' || (from.kind === 'pair' && levelOf(from.sign) < level);
  return loose ? bracketed(phrasesOf(from)) : phrasesOf(from);
}

const argument = (of: Expression): readonly Phrase[] => inner(of, 1);

/** “1 because it is so” instead of “if … then … otherwise”: the way not taken explains nothing about a figure. */
function takenBranch({ name, of }: Call): readonly Phrase[] | null {
  const [condition, yes, no] = of;
  if (name !== 'IF' || condition === undefined || yes === undefined || no === undefined) return null;
  const holds = decideCondition(condition);
  if (holds === null) return null;
  return [...inner(holds ? yes : no, 1), words('because'), ...conditionWords(condition, holds)];
}

function conditionWords(condition: Expression, holds: boolean): readonly Phrase[] {
  if (holds || condition.kind !== 'pair' || isYes(condition)) return phrasesOf(condition);
  const not = (signWords[condition.sign] ?? condition.sign).replace(/^is( not)?/, (_, no) =>
    no === undefined ? 'is not' : 'is',
  );
  return [...inner(condition.left, 1), words(not), ...inner(condition.right, 1)];
}

const isYes = ({ sign, left, right }: Pair): boolean =>
  sign === '=' &&
  left.kind === 'operand' &&
  left.part.unit === 'yes or no' &&
  right.kind === 'number' &&
  Number(right.text) === 1;

const levelOf = (sign: string): number => pairSigns.findIndex((signs) => signs.includes(sign));

const signWords: Readonly<Record<string, string>> = {
  '*': '×',
  '/': '÷',
  '+': '+',
  '-': '−',
  '^': 'to the power of',
  '=': 'is',
  '<>': 'is not',
  '>': 'is more than',
  '<': 'is less than',
  '>=': 'is at least',
  '<=': 'is at most',
};

function asWritten(parts: readonly TracePart[]): readonly Phrase[] {
  return parts.map((part): Phrase => {
    switch (part.kind) {
      case 'operand':
        return { kind: 'chip', part };
      case 'number':
        return { kind: 'number', value: Number(part.text) };
      case 'function':
        return words(part.text);
      case 'sign':
        return part.text === '(' || part.text === ')'
          ? { kind: 'bracket', side: part.text === '(' ? 'open' : 'close' }
          : words(signWords[part.text] ?? part.text);
      default:
        return part satisfies never;
    }
  });
}
