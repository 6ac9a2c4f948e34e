import { type BenchRow, timeRow } from '@/tests/bench/benchRow';
import { median, timesBeside } from '@/tests/bench/measure';
import { binInstances, piecesOf } from '@/tests/outside/packingInstances';
import { LIBRARY, type Library } from './library';
import { countRow, type PackedPiece, type Paper, sheetsFor } from './paper';

const RUNS = 3;

/** @returns mixed pieces of published instances; nothing where their file is not. */
export function binRows(library: Library): readonly BenchRow[] {
  const { instances } = binInstances();
  if (instances.length === 0) return [];
  const inputs = instances.map(({ binWidth, binHeight, items }) => ({
    paper: { widthMm: binWidth, heightMm: binHeight },
    pieces: piecesOf(items),
  }));
  const spent = inputs.map((input) =>
    timesBeside(
      RUNS,
      () => input,
      ({ paper, pieces }) => sheetsFor(paper, pieces),
      ({ paper, pieces }) => library.once(paper, pieces),
    ),
  );
  const each = {
    figure: spent.map(({ figure }) => median(figure)),
    yardstick: spent.map(({ yardstick }) => median(yardstick)),
  };
  const sum = (count: (paper: Paper, pieces: readonly PackedPiece[]) => number) =>
    inputs.reduce((total, { paper, pieces }) => total + count(paper, pieces), 0);
  const bins = sum(sheetsFor);
  const what = 'mixed pieces, bin classes n = 20, best known 491';
  return [
    timeRow('mixed pieces, bin classes n = 20, each of 100', each, LIBRARY),
    countRow(what, 'bins', bins, { what: LIBRARY, median: sum(library.once) }),
    countRow(what, 'bins', bins, { what: 'the library, best of 200 orders', median: sum(library.best) }),
  ];
}
