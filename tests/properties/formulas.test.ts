import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calculateFormula } from '@/lib/grid/engine';
import { readOwnFormulas } from '@/lib/grid/readOwnFormulas';
import { tokenizeFormula } from '@/lib/grid/tokenizeFormula';
import type { OwnRow } from '@/shared/schemas/ownRow';
import { cases } from '@/tests/tools/cases';

const own = (formula: string): OwnRow => ({
  id: 'own_row',
  label: 'Own row',
  outOfPocket: false,
  cost: { kind: 'formula', formula },
});

/** Anything at all, and words of the language in any order. */
const word = fc.constantFrom(
  'blankPrice',
  'attended',
  'own_row',
  'fullCost',
  'nothing',
  'MAX(',
  'IF(',
  'SUMPRODUCT(',
  '(',
  ')',
  ';',
  ',',
  '+',
  '-',
  '*',
  '/',
  '^',
  '%',
  '<=',
  '<>',
  '=',
  '1',
  '0.5',
  '.5',
  '1e3',
  '1.',
  'A1',
  '$A$1',
  'Job!A1',
  '"text"',
  '{1;2}',
  '#REF!',
  ' ',
  '\n',
  '\u0000',
  '−',
  '½',
  '\u{1F600}',
);
const formula = fc.oneof(
  fc.string({ unit: 'binary', minLength: 1, maxLength: 60 }),
  fc.array(word, { minLength: 1, maxLength: 14 }).map((words) => words.join('')),
);

describe('tokenizeFormula', () => {
  it('takes any text apart without a word of it lost', () => {
    fc.assert(
      fc.property(formula, (text) => {
        const tokens = tokenizeFormula(text);
        expect(tokens.map((token) => token.text).join('')).toBe(text.replace(/\s+/gu, ''));
        for (const { text: found, at } of tokens) expect(text.slice(at, at + found.length)).toBe(found);
      }),
      cases(5000),
    );
  });
});

describe('readOwnFormulas', () => {
  it('never throws, and points into the text or just behind it', () => {
    fc.assert(
      fc.property(formula, (text) => {
        for (const problem of readOwnFormulas([own(text)])) {
          expect(problem.rowId).toBe('own_row');
          if (problem.kind === 'circle') expect(problem.names.length).toBeGreaterThan(1);
          else {
            expect(problem.at).toBeGreaterThanOrEqual(0);
            expect(problem.at).toBeLessThanOrEqual(text.length);
          }
        }
      }),
      cases(2000),
    );
  }, 60_000);

  it('says the same each time', () => {
    fc.assert(
      fc.property(formula, (text) => {
        expect(readOwnFormulas([own(text)])).toEqual(readOwnFormulas([own(text)]));
      }),
      cases(1000),
    );
  }, 60_000);
});

describe('calculateFormula', () => {
  it('gives a finite number or an error by name, and never throws', () => {
    fc.assert(
      fc.property(formula, (text) => {
        const value = calculateFormula(`=${text}`);
        if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
        else expect(value.error).toMatch(/^#/);
      }),
      cases(2000),
    );
  }, 60_000);
});
