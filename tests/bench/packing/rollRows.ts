import { packRoll } from '@/lib/packing/roll/packRoll';
import { type BenchRow, timeRow } from '@/tests/bench/benchRow';
import { median, timesBeside } from '@/tests/bench/measure';
import { piecesOf, stripInstances } from '@/tests/outside/packingInstances';
import { LIBRARY, type Library } from './library';
import { bare, countRow } from './paper';

const RUNS = 3;

/** @returns rolls of published instances; nothing where their file is not. */
export function rollRows(library: Library): readonly BenchRow[] {
  const { instances } = stripInstances();
  if (instances.length === 0) return [];
  const packed = instances.map(({ stripWidth, optimalHeight, items }) => {
    const request = { ...bare, rollWidthMm: stripWidth, pieces: piecesOf(items) };
    // The library has no rolls: a sheet of the roll's width on which everything fits.
    const heightMm = items.reduce((sum, sides) => sum + Math.max(...sides), 0);
    const spent = timesBeside(
      RUNS,
      () => request,
      (asked) => packRoll(asked),
      ({ pieces }) => library.once({ widthMm: stripWidth, heightMm }, pieces),
    );
    const answer = packRoll(request);
    const excess = answer.ok ? (100 * answer.value.rollLengthMm) / optimalHeight - 100 : Number.NaN;
    return { figure: median(spent.figure), yardstick: median(spent.yardstick), excess };
  });
  const each = {
    figure: packed.map(({ figure }) => figure),
    yardstick: packed.map(({ yardstick }) => yardstick),
  };
  const excesses = packed.map(({ excess }) => excess);
  const mean = excesses.reduce((sum, value) => sum + value, 0) / excesses.length;
  return [
    timeRow('rolls C1 to C7, each of 21', each, LIBRARY),
    countRow('rolls C1 to C7, mean beyond the optimum', '%', mean),
    countRow('rolls C1 to C7, most beyond the optimum', '%', Math.max(...excesses)),
  ];
}
