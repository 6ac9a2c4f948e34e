import { describe, expect, it } from 'vitest';
import { calculate } from '@/tests/fixtures/calculate';

/* OASIS Open Document Format 1.3, Part 4: OpenFormula (2021). Results worked from its sections. */
describe('OpenFormula', () => {
  it.each([
    // 6.17.5: half away from zero, digits may be negative.
    ['ROUND(2.5)', 3],
    ['ROUND(-2.5)', -3],
    ['ROUND(1234;-2)', 1200],
    ['ROUND(-1.25;1)', -1.3],
    // 6.17.1: towards plus infinity; with a mode away from zero; 0 stays 0.
    ['CEILING(2.1;1)', 3],
    ['CEILING(-2.5;-2)', -2],
    ['CEILING(-2.5;-2;1)', -4],
    ['CEILING(0;5)', 0],
    ['CEILING(2.1)', 3],
    // 6.17.3: towards minus infinity; with a mode towards zero.
    ['FLOOR(-2.5;-2)', -4],
    ['FLOOR(-2.5;-2;1)', -2],
    ['FLOOR(2.9;1)', 2],
    // 6.17.4: the nearest multiple, a tie to the greater.
    ['MROUND(17;5)', 15],
    ['MROUND(15;10)', 20],
    ['MROUND(-15;10)', -10],
    // 6.17.6 and 6.17.7: towards and away from zero.
    ['ROUNDDOWN(-10.33)', -10],
    ['ROUNDUP(2.001;2)', 2.01],
    ['ROUNDUP(-2.001;2)', -2.01],
    // 6.17.2 and 6.17.8.
    ['INT(-1.5)', -2],
    ['TRUNC(-1.5)', -1],
    // 6.16.41: the sign of the divisor.
    ['MOD(-7;3)', 2],
    ['MOD(7;-3)', -2],
    ['QUOTIENT(-7;3)', -2],
    // 6.16.16 and 6.12.36.
    ['COMBIN(5;3)', 10],
    ['ROUND(PMT(10%;5;10000);2)', -2637.97],
    // 5.5, table 1: prefix signs before percent, then powers from the left, then products, then sums.
    ['2^3', 8],
    ['2+3*4', 14],
    ['(2+3)*4', 20],
    ['-2^2', 4],
    ['2^3^2', 64],
    ['10-4-3', 3],
    ['50%*8', 4],
    ['IF(2>=2;7;8)', 7],
    ['MAX(1;5;3)', 5],
  ])('%s is %d', (formula, value) => {
    expect(calculate([`=${formula}`])).toEqual([value]);
  });

  it.each([
    ['1/0', '#DIV/0!'],
    ['MOD(1;0)', '#DIV/0!'],
    ['QUOTIENT(1;0)', '#DIV/0!'],
    ['SQRT(-1)', '#NUM!'],
    ['NOSUCH(1)', '#NAME?'],
    ['1+"half"', '#VALUE!'],
    // Signs must agree where the mode is left to the sign.
    ['CEILING(2.5;-2)', '#NUM!'],
    ['1+', '#ERROR!'],
    // A comma parts no arguments.
    ['MAX(1,2)', '#ERROR!'],
  ])('%s is the error %s', (formula, error) => {
    expect(calculate([`=${formula}`])).toEqual([{ error }]);
  });
});

/* Faults seen in public by users of formula engines: each is a kind, of which the value stands for all. */
describe('rounding in a formula goes by decimals, not by the doubles under them', () => {
  it.each([
    // handsontable/hyperformula issue 1746.
    ['ROUND(21.9/0.2;0)', 110],
    // formulajs/formulajs issue 109.
    ['ROUND(600.425;2)', 600.43],
    ['ROUND(1.005;2)', 1.01],
    ['ROUND(8.575;2)', 8.58],
    ['ROUND(-1.005;2)', -1.01],
    // Issue 21.
    ['ROUNDUP(0.2+0.1;2)', 0.3],
    ['CEILING(0.1*3;0.1)', 0.3],
    ['FLOOR(0.7+0.1;0.1)', 0.8],
    // PHPOffice/PhpSpreadsheet issue 920.
    ['ROUNDDOWN(30000*0.0042*3;0)', 378],
    // A sheet too many would be bought: 1.1 × 3 ÷ 3.3 is 1.0000000000000002 in doubles.
    ['ROUNDUP(1.1*3/3.3;0)', 1],
    // 4.35 × 100 is 434.99999999999994.
    ['INT(4.35*100)', 435],
    ['TRUNC(4.35*100)', 435],
    // 0.3 ÷ 0.1 is 2.9999999999999996.
    ['QUOTIENT(0.3;0.1)', 3],
    ['MOD(0.3;0.1)', 0],
    ['MOD(1;0.1)', 0],
    ['MROUND(6.05;0.1)', 6.1],
    ['INT(-0.1*3*10)', -3],
  ])('%s is %d', (formula, value) => {
    expect(calculate([`=${formula}`])).toEqual([value]);
  });
});
