import { describe, expect, it } from 'vitest';
import { decideCondition } from '@/lib/grid/decideCondition';
import { readExpression } from '@/lib/grid/readExpression';
import { tracedParts } from '@/tests/fixtures/tracedParts';

describe('decideCondition', () => {
  it.each<[string, boolean | null]>([
    ['years * runs > 0', false],
    ['years = 0', true],
    ['price >= 19', true],
    ['price - 20 < 0', true],
    ['price <> 19', false],
    ['price / years > 1', null],
    ['ABS(price) > 1', null],
    ['price', null],
  ])('%s: %s', (formula, holds) => {
    const read = readExpression(tracedParts(formula, { years: 0, runs: 12, price: 19 }));
    expect(read === null ? 'unread' : decideCondition(read)).toBe(holds);
  });
});
