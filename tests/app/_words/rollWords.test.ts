import { describe, expect, it } from 'vitest';
import { formatterFor } from '@/app/_words/formatter';
import { rollWords } from '@/app/_words/rollWords';
import { club } from '@/tests/fixtures/clubJob';

const { units, locale, currency } = club().workshop;
const formatter = formatterFor({ units, locale, currency });
const said = (metres: number, rollMetres: number | null) =>
  rollWords(
    { lengthMm: metres * 1000, rolls: rollMetres === null ? null : metres / rollMetres },
    rollMetres === null ? null : rollMetres * 1000,
    formatter,
  );

describe('rollWords', () => {
  it.each([
    [7.4, 30, '7.4 m of roll, about a quarter of a 30 m roll'],
    [0.7, 30, '0.7 m of roll, about a fiftieth of a 30 m roll'],
    [3, 30, '3 m of roll, about a tenth of a 30 m roll'],
    [16, 30, '16 m of roll, about half of a 30 m roll'],
    [29, 30, '29 m of roll, about a whole 30 m roll'],
    [64, 30, '64 m of roll, 3 rolls of 30 m'],
    [4.6, null, '4.6 m of roll'],
  ])('%d m where a new roll holds %s m is “%s”', (metres, roll, words) => {
    expect(said(metres, roll)).toBe(words);
  });
});
