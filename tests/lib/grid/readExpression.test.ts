import { describe, expect, it } from 'vitest';
import { type Expression, readExpression } from '@/lib/grid/readExpression';
import { tracedParts } from '@/tests/fixtures/tracedParts';

/** An expression with all its brackets. */
function written(from: Expression | null): string {
  switch (from?.kind) {
    case 'operand':
      return from.part.label;
    case 'number':
      return from.text;
    case 'lead':
      return `(${from.sign}${written(from.of)})`;
    case 'percent':
      return `(${written(from.of)}%)`;
    case 'pair':
      return `(${written(from.left)}${from.sign}${written(from.right)})`;
    case 'call':
      return `${from.name}[${from.of.map(written).join(' ')}]`;
    default:
      return 'none';
  }
}

describe('readExpression', () => {
  it.each([
    ['a - b - c', '((a-b)-c)'],
    ['a - (b - c)', '(a-(b-c))'],
    ['a + b * c', '(a+(b*c))'],
    ['-a * b', '((-a)*b)'],
    ['a / 2 ^ 3', '(a/(2^3))'],
    ['5% * a', '((5%)*a)'],
    ['IF(a > 0; a / b; 0)', 'IF[(a>0) (a/b) 0]'],
    ['max(a; b; c)', 'MAX[a b c]'],
    ['a >= b + 1', '(a>=(b+1))'],
  ])('reads %s as %s', (formula, tree) => {
    expect(written(readExpression(tracedParts(formula)))).toBe(tree);
  });

  it.each(['', 'a +', '(a', 'a)', 'a b', 'MAX(a; ', '* a'])('gives nothing for “%s”', (formula) => {
    expect(readExpression(tracedParts(formula))).toBeNull();
  });
});
