import { describe, expect, it } from 'vitest';
import { curveCsv } from '@/lib/exports/curveCsv';
import type { BatchPoint } from '@/lib/studies/curve/batchPoint';

const point = (n: number, fullCost: number): BatchPoint => ({
  n,
  fullCost,
  targetTotal: 0,
  price: 20 * n,
  fees: 0,
  profit: 20 * n - fullCost,
  margin: (20 * n - fullCost) / (20 * n),
  payPerHour: 1234.5678,
  paidMinutes: 60,
});

const points = [point(1, 100.005), point(2, 30)];

describe('curveCsv', () => {
  it('writes a header and one row a batch, with plain numbers', () => {
    expect(curveCsv('Shirts', 'USD', points).split('\r\n')).toEqual([
      'job,pieces,full cost (USD),full cost a piece (USD),price (USD),price a piece (USD),profit (USD),margin (share),pay an hour (USD)',
      // 100.005 goes to the cent away from zero, as its loss of 80.005 does; 10 of 40 is a quarter.
      expect.stringMatching(/^Shirts,1,100\.01,100\.01,20,20,-80\.01,-4\.000[23],1234\.57$/),
      'Shirts,2,30,15,40,20,10,0.25,1234.57',
      '',
    ]);
  });

  it.each([
    ['=1+2', "'=1+2"],
    ['+A1', "'+A1"],
    ['@SUM(A1)', "'@SUM(A1)"],
    ['-2+3', "'-2+3"],
    ['\t=1', "'\t=1"],
    ['=HYPERLINK("x","y")', `"'=HYPERLINK(""x"",""y"")"`],
    ['a, b', '"a, b"'],
    ['two\nlines', '"two\nlines"'],
  ])('never lets the name of a job run as a formula or break its row: %j', (name, cell) => {
    expect(curveCsv(name, 'USD', points)).toContain(`\r\n${cell},2,30,15,`);
  });

  it('writes a currency without small coins in whole units', () => {
    expect(curveCsv('Shirts', 'JPY', points)).toContain('Shirts,1,100,100,20,20,-80,');
  });
});
