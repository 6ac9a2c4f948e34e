/** A placed piece that says whose it is; millimetres from the top left corner of the paper, margins included. */
export interface NamedPiece {
  readonly id: string;
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly turned: boolean;
}

export interface PackedSheet {
  readonly pieces: readonly NamedPiece[];
}

/** Pieces of several sizes laid on equal sheets. */
export interface PackedSheets {
  /** Sheets full of one piece first, then the fullest. */
  readonly sheets: readonly PackedSheet[];
  /** Sheets needed. */
  readonly count: number;
  /** No layout needs fewer sheets than this. */
  readonly lowerBound: number;
  /** No layout that is cut straight through, again and again, needs fewer; null where nobody worked it out. */
  readonly guillotineBound: number | null;
}

/**
 * Layouts of shared sheets that were found before, by the key of the question they answer; plain data. Batches
 * that are only counted have keys of their own and no sheets.
 */
export type KnownLayouts = Readonly<Record<string, PackedSheets>>;
