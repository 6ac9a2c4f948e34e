import type { Change, Where } from '@/shared/finding';
import type { Print } from '@/shared/schemas/job';
import type { ResolvedJob, ResolvedLine, ResolvedPlacement } from './checkedJob';
import { printOfSize } from './printOfSize';

type Path = readonly (string | number)[];

/** A line of the job with the way to its fields. */
export interface LinePlace {
  readonly line: ResolvedLine;
  readonly lineIndex: number;
  readonly where: (...path: Path) => Where;
  /** A field of the line's blank. */
  readonly whereBlank: (...path: Path) => Where;
  readonly change: (path: Path, value: unknown) => Change;
}

/** A print size that at least one wanted size gets. */
export interface PrintPlace {
  readonly print: Print;
  readonly printIndex: number;
  /** Names of the wanted sizes that get it. */
  readonly sizes: readonly string[];
}

/** A placement of the job with the way to its fields. */
export interface PlacementPlace {
  readonly line: ResolvedLine;
  readonly placed: ResolvedPlacement;
  /** Place in press order, from 0. */
  readonly index: number;
  readonly prints: readonly PrintPlace[];
  readonly where: (...path: Path) => Where;
  /** A field of the placement's artwork. */
  readonly whereArtwork: (...path: Path) => Where;
  readonly change: (path: Path, value: unknown) => Change;
}

/** @returns every line, in the order of the job. */
export const linePlaces = (job: ResolvedJob): readonly LinePlace[] =>
  job.lines.map((line, lineIndex) => ({
    line,
    lineIndex,
    where: (...path) => ({ document: 'job', path: ['lines', lineIndex, ...path], lineId: line.line.id }),
    whereBlank: (...path) => ({ document: 'blank', id: line.line.blankId, path, lineId: line.line.id }),
    change: (path, value) => ({ document: 'job', path: ['lines', lineIndex, ...path], value }),
  }));

/** @returns every placement, line by line in press order. */
export const placementPlaces = (job: ResolvedJob): readonly PlacementPlace[] =>
  linePlaces(job).flatMap(({ line, lineIndex }) =>
    line.placements.map((placed, index): PlacementPlace => {
      const { placement } = placed;
      const path: Path = ['lines', lineIndex, 'placements', index];
      const ids = { lineId: line.line.id, placementId: placement.id };
      return {
        line,
        placed,
        index,
        prints: placement.prints.flatMap((print, printIndex) => {
          const sizes = line.sizes
            .map(({ size }) => size)
            .filter((size) => printOfSize(placement, size) === printIndex);
          return sizes.length === 0 ? [] : [{ print, printIndex, sizes }];
        }),
        where: (...rest) => ({ document: 'job', path: [...path, ...rest], ...ids }),
        whereArtwork: (...rest) => ({ document: 'artwork', id: placement.artworkId, path: rest, ...ids }),
        change: (rest, value) => ({ document: 'job', path: [...path, ...rest], value }),
      };
    }),
  );
