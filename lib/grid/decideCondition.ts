import type { Expression } from './readExpression';

/**
 * Whether the condition of an IF holds with the values its operands have.
 *
 * @returns null where it cannot be told from comparisons and plain arithmetic
 * @example decideCondition(years > 0) // false, where the operand “years” is 0
 */
export function decideCondition(condition: Expression): boolean | null {
  if (condition.kind !== 'pair') return null;
  const compare = comparisons[condition.sign];
  const left = figureOf(condition.left);
  const right = figureOf(condition.right);
  return compare === undefined || left === null || right === null ? null : compare(left, right);
}

const comparisons: Readonly<Record<string, (left: number, right: number) => boolean>> = {
  '=': (left, right) => left === right,
  '<>': (left, right) => left !== right,
  '<': (left, right) => left < right,
  '>': (left, right) => left > right,
  '<=': (left, right) => left <= right,
  '>=': (left, right) => left >= right,
};

const arithmetic: Readonly<Record<string, (left: number, right: number) => number>> = {
  '+': (left, right) => left + right,
  '-': (left, right) => left - right,
  '*': (left, right) => left * right,
  '/': (left, right) => left / right,
};

function figureOf(from: Expression): number | null {
  switch (from.kind) {
    case 'operand':
      return from.part.value;
    case 'number':
      return Number(from.text);
    case 'lead': {
      const of = figureOf(from.of);
      return of === null ? null : from.sign === '-' ? -of : of;
    }
    case 'percent': {
      const of = figureOf(from.of);
      return of === null ? null : of / 100;
    }
    case 'pair': {
      const work = arithmetic[from.sign];
      const left = figureOf(from.left);
      const right = figureOf(from.right);
      if (work === undefined || left === null || right === null) return null;
      const value = work(left, right);
      return Number.isFinite(value) ? value : null;
    }
    case 'call':
      return null;
    default:
      return from satisfies never;
  }
}
