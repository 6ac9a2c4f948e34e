import { expect, it } from 'vitest';
import { fileName } from '@/app/_files/saveBlob';
import { gapUnitWords } from '@/app/_words/afterRun/gapWords';
import { tookWords } from '@/app/_words/afterRun/tookWords';
import { formatterFor } from '@/app/_words/formatter';
import { reservedWords } from '@/app/_words/making/stockroomWords';
import { leftOverWords, needWords } from '@/app/_words/supply/buyingWords';
import { runResult } from '@/lib/variances/runResult';
import { club } from '@/tests/fixtures/clubJob';
import { clubStandard, noFacts } from '@/tests/fixtures/clubStandard';

/* Nobody uses a part of a blank or a sheet: what is reckoned in parts is told in whole ones. */

const formatter = formatterFor(club().workshop);

it('takes 53 sheets and 40 blanks where 52.9 and 39.5 are reckoned', () => {
  const paid = { blank: () => null, sheet: () => null };
  const result = runResult({ body: clubStandard() }, { facts: noFacts, paid, orderHours: [] });
  expect(tookWords(result, null, formatter, 'en-US').key).toMatch(/^40 blanks, 53 sheets, 35\.1 mL/);
});

it('rounds what is reserved up and what is free down, and leaves ink in its parts', () => {
  const item = { kind: 'paper' as const, sheetId: 'letter' };
  const all = { item, shortOn: null, needs: [] };
  const told = (ready: number | null, free: number | null, unit: string, reserved = 153.89) =>
    reservedWords({ ...all, ready, free, reserved }, formatter, unit);
  expect(told(200, 46.11, 'sheets').more).toEqual(['154 sheets reserved, 46 sheets free.']);
  // 16 more went out than came in: what is kept is all that is lacking, as on a list.
  expect(told(-16, -34, 'sheets', 18).wrong).toEqual(['Short of 18 sheets: 18 sheets reserved. Buy them.']);
  expect(told(150, -3.89, 'sheets').wrong).toEqual(['Short of 4 sheets: 154 sheets reserved. Buy them.']);
  expect(told(200, 159.5, 'mL', 40.5).more).toEqual(['40.5 mL reserved, 159.5 mL free.']);
  // To the last bit of a sum: 41 stay 41.
  expect(told(45, 4, '', 41.00000000001).more).toEqual(['41 reserved, 4 free.']);
});

it('needs whole sheets, and parts of a metre', () => {
  expect([needWords(52.9, 'sheet', formatter), needWords(3.42, 'm', formatter)]).toEqual(['53', '3.4']);
  expect([leftOverWords(0.7, formatter), leftOverWords(5.4, formatter)]).toEqual(['At most 1', 'About 5']);
});

it('has the plural of what a formula counts', () => {
  expect(gapUnitWords('piece', 41)).toBe('pieces');
  expect(gapUnitWords('piece', 1)).toBe('piece');
  expect(gapUnitWords('h', 2)).toBe('h');
});

it('leaves no gap in the name of a file where a sign was taken out', () => {
  expect(fileName('Run sheet: Ramblers')).toBe('Run sheet Ramblers');
});
