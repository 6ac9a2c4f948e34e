import { describe, expect, it } from 'vitest';
import { readOwnFormulas } from '@/lib/grid/readOwnFormulas';
import { formulaFindings } from '@/lib/grid/rowFindings';
import type { OwnRow } from '@/shared/schemas/ownRow';
import { ownCost } from '@/tests/fixtures/plainJob';

const written = (id: string, formula: string): OwnRow => ({
  id,
  label: id,
  outOfPocket: false,
  cost: { kind: 'formula', formula },
});
const read = (formula: string) => readOwnFormulas([written('own_row', formula)]);

describe('a formula that can be used', () => {
  it.each([
    '1',
    'blankPrice * 0.1 + 0.25',
    'MAX(attended / 60 * 2; 0.5)',
    'max(1; 2)',
    'ROUNDUP(jobPieces / 12; 0) * 1.8 / jobPieces',
    'IF(pieces >= 24; 0; 3 / pieces)',
    '-(sheets + 2) ^ 2',
    '50% * blanks',
    'wage * scrap_1 + enter_2',
    'MAX (0.5; .25)',
    '(1 + 2) * 3',
  ])('%s', (formula) => expect(read(formula)).toEqual([]));
});

describe('a formula that cannot be used is told with its place', () => {
  it.each([
    // what is wrong, formula, problem
    ['a name no row has', 'blankPrice * tarif', { kind: 'unknownName', name: 'tarif', at: 13 }],
    ['a name in other letters', 'BlankPrice', { kind: 'unknownName', name: 'BlankPrice', at: 0 }],
    ['the address of a cell', 'A1 + 1', { kind: 'unknownName', name: 'A1', at: 0 }],
    ['a placement that no job has', 'enter_5', { kind: 'unknownName', name: 'enter_5', at: 0 }],
    ['TRUE without its brackets', 'IF(TRUE; 1; 2)', { kind: 'unknownName', name: 'TRUE', at: 3 }],
    ['a function that is not allowed', '1 + NOW()', { kind: 'unknownFunction', name: 'NOW', at: 4 }],
    [
      'a name called like a function',
      'blankPrice(1)',
      { kind: 'unknownFunction', name: 'blankPrice', at: 0 },
    ],
    ['a comma between arguments', 'MAX(1, 2)', { kind: 'comma', at: 5 }],
    ['a text', 'blankPrice & "x"', { kind: 'badSign', text: '&', at: 11 }],
    ['a typographic minus', '5 − 2', { kind: 'badSign', text: '−', at: 2 }],
    ['a currency sign', '$5', { kind: 'badSign', text: '$', at: 0 }],
    ['a sheet address', 'Job!A1', { kind: 'unknownName', name: 'Job', at: 0 }],
    ['a bracket left open', 'MAX(1; 2', { kind: 'unreadable', at: 8 }],
    ['a bracket too many', '(1 + 2))', { kind: 'unreadable', at: 7 }],
    ['two values side by side', '2 blankPrice', { kind: 'unreadable', at: 2 }],
    // Run together they would be ten.
    ['two numbers side by side', '1 0', { kind: 'unreadable', at: 2 }],
    ['a number before a bracket', '(1 + 2) * 3 (4)', { kind: 'unreadable', at: 12 }],
    ['a percentage before a number', '50% 8', { kind: 'unreadable', at: 4 }],
    ['two signs side by side', '2 * / 3', { kind: 'unreadable', at: 4 }],
    ['a sign at the end', '2 *', { kind: 'unreadable', at: 3 }],
    ['an equals sign in front', '=1', { kind: 'unreadable' }],
    ['nothing but spaces', '   ', { kind: 'unreadable' }],
  ])('%s: %s', (_, formula, problem) => {
    expect(read(formula)[0]).toMatchObject({ rowId: 'own_row', ...problem });
  });

  const nested = (open: string, depth: number) => `${open.repeat(depth)}1${')'.repeat(depth)}`;

  it.each([
    ['brackets', nested('(', 20)],
    ['functions', nested('ABS(', 20)],
    ['brackets side by side', `${'(1)+'.repeat(120)}1`],
    ['signs in a row', `${'-'.repeat(499)}1`],
    ['sums in a row', `1${'+1'.repeat(249)}`],
    ['powers in a row', `1${'^1'.repeat(249)}`],
  ])('%s within the limits are read: %s', (_, formula) => expect(read(formula)).toEqual([]));

  it.each([
    ['brackets', nested('(', 21), 20],
    ['brackets, as many as a formula holds', nested('(', 249), 20],
    ['brackets that stay open', '('.repeat(500), 20],
    ['functions', nested('ABS(', 21), 83],
    ['signs and brackets', nested('-(', 120), 41],
  ])('%s inside one another beyond twenty are told, and not handed to the engine: %s', (_, formula, at) => {
    expect(read(formula)).toEqual([{ kind: 'tooDeep', rowId: 'own_row', at }]);
  });

  it('every problem of every row is told at once', () => {
    const problems = readOwnFormulas([written('own_a', 'x + y'), written('own_b', 'NOW()')]);
    expect(problems.map((problem) => [problem.rowId, problem.kind])).toEqual([
      ['own_a', 'unknownName'],
      ['own_a', 'unknownName'],
      ['own_b', 'unknownFunction'],
    ]);
  });
});

describe('a comma in a formula', () => {
  // OpenFormula 1.2, 5.2 and 5.6: decimals follow a point, values are parted by a semicolon.
  it.each([
    ['0,5', '0.5', '0.5'],
    ['1,5*blanks', '1.5', '1.5*blanks'],
    ['1.000,5', '1000.5', '1000.5'],
    ['1,000.5', '1000.5', '1000.5'],
    ['1,000,000', '1000000', '1000000'],
    ['0,125 * pieces', '0.125', '0.125 * pieces'],
    ['2*(0,5)', '0.5', '2*(0.5)'],
    ['MAX(0,5; 1)', '0.5', 'MAX(0.5; 1)'],
  ])('in %s is told as a decimal mark: write %s', (formula, instead, mended) => {
    expect(read(formula)).toMatchObject([{ kind: 'decimalComma', instead, mended }]);
    expect(read(mended)).toEqual([]);
  });

  it.each([
    ['MAX(1,5)', '1.5', '1; 5'],
    ['MAX(1.000,5)', '1000.5', '1.000; 5'],
    ['1,500 * pieces', '1.500', '1500'],
  ])('in %s can mean two things, %s or %s, and nothing is chosen', (formula, instead, other) => {
    expect(read(formula)).toMatchObject([{ kind: 'unclearComma', instead, other, mended: null }]);
  });

  it('mends all numbers of a formula at once, and none where something else is wrong', () => {
    expect(read('0,5 + 1,25').map((one) => 'mended' in one && one.mended)).toEqual([
      '0.5 + 1.25',
      '0.5 + 1.25',
    ]);
    expect(read('0,5 * tarif')).toMatchObject([
      { kind: 'decimalComma', at: 0, mended: null },
      { kind: 'unknownName', at: 6 },
    ]);
  });

  it.each([
    ['blanks, 2', 6],
    ['1,2,3', 1],
    ['1,,5', 1],
  ])('of %s that stands for no number is told by itself', (formula, at) => {
    expect(read(formula)[0]).toMatchObject({ kind: 'comma', at });
  });

  it('is never told to be taken out: 0,5 without it would be 5', () => {
    const [finding] = formulaFindings(read('0,5'), [], [written('own_row', '0,5')]);
    expect(finding).toMatchObject({
      variant: 'decimalComma',
      fix: {
        label: 'pointDecimals',
        changes: [{ document: 'job', path: ['ownRows', 0, 'cost', 'formula'], value: '0.5' }],
      },
    });
  });
});

describe('a formula that leads back to itself names the rows on the way', () => {
  it.each<[string, readonly OwnRow[], readonly string[]]>([
    ['by its own name', [written('own_a', 'own_a + 1')], ['own_a', 'own_a']],
    ['through full cost', [written('own_a', 'fullCost * 0.1')], ['own_a', 'fullCost', 'ownCosts', 'own_a']],
    [
      'through the target price',
      [written('own_a', 'target')],
      ['own_a', 'target', 'fullCost', 'ownCosts', 'own_a'],
    ],
    [
      'through another own row',
      [written('own_a', 'own_b * 2'), written('own_b', 'own_a / 2')],
      ['own_a', 'own_b', 'own_a'],
    ],
  ])('%s', (_, rows, names) => {
    expect(readOwnFormulas(rows)[0]).toEqual({ kind: 'circle', rowId: 'own_a', names });
  });

  it('is no circle where a choice is left aside but names no row of its own', () => {
    // handsontable/hyperformula issue 336: A1 = 5, B1 = IF(A1=0;B1;A1) is a circle, and its cells are to be named.
    const problems = readOwnFormulas([written('own_a', 'IF(pieces = 0; own_a; pieces)')]);
    expect(problems).toEqual([{ kind: 'circle', rowId: 'own_a', names: ['own_a', 'own_a'] }]);
  });

  it('is told for a row that is driven by nothing but money no more than for others', () => {
    expect(readOwnFormulas([ownCost('a', 'piece', 1), written('own_b', 'own_a * 2')])).toEqual([]);
  });
});
