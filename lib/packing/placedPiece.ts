/** A piece where it lies; millimetres from the top left corner of the paper, margins included. */
export interface PlacedPiece {
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
  /** True when it lies turned by 90°: its width is then the height it was asked with. */
  readonly turned: boolean;
}
