import type { PlacedPiece } from '@/lib/packing/placedPiece';

/** One print size of one placement on the job's sheet. */
export interface LaidOutPrint {
  readonly lineId: string;
  readonly placementId: string;
  /** Place of the print size in the placement's list. */
  readonly print: number;
  readonly sizes: readonly string[];
  readonly widthMm: number;
  readonly heightMm: number;
  /** Good pieces that carry it. */
  readonly pieces: number;
  /** Where prints are ganged together: how many of this one a sheet of the layout would carry, in fractions. */
  readonly perSheet: number;
  /** How many sheets one of them counts for: 1 of cut ones; of a roll, the area of a strip in letter sheets. */
  readonly sheetWorth: number;
  readonly turned: boolean;
  readonly placed: readonly PlacedPiece[];
  /** Whole sheets, or strips of roll, for the good pieces, nothing spoiled; of shared ones the share of its area. */
  readonly sheets: number;
  /** Free places on the last of them. */
  readonly spare: number;
  /** Share of a full sheet that no print covers. */
  readonly wasteShare: number;
  /** Only on a roll, where a strip across it takes the place of a sheet. */
  readonly roll?: RollOfPrint;
  /** Only where it shares sheets with other prints. */
  readonly ganged?: GangedShare;
}

/** How a print lies on a roll by itself. */
interface RollOfPrint {
  /** Roll cut off for the good pieces, mm. */
  readonly lengthMm: number;
  /** Length of a row with its gutter, mm. */
  readonly pitchMm: number;
  readonly marginMm: number;
  readonly gutterMm: number;
}

/** All the area on shared sheets, counted in pieces of one print: so many of it would cover as much. */
export interface GangedShare {
  /** Of its own line. */
  readonly own: number;
  /** Of the other lines. */
  readonly others: number;
  /** Sheets of other batches of the whole job that were packed, rising, this one among them; only where any was. */
  readonly batches?: readonly KnownBatch[];
}

/** How many shared sheets a batch of the whole job takes. */
export interface KnownBatch {
  /** Good pieces of all lines. */
  readonly n: number;
  readonly sheets: number;
}
