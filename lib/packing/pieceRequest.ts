export type { NamedPiece } from '@/shared/packedSheets';

/** Equal pieces to lay out. */
export interface PieceKind {
  readonly id: string;
  /** Millimetres, above 0; as it is to be seen, before any turn. */
  readonly widthMm: number;
  readonly heightMm: number;
  /** Whole, 1 or more. */
  readonly count: number;
}

/** What a layout on sheets and one on a roll have in common. */
export interface PieceRequest {
  readonly pieces: readonly PieceKind[];
  /** Clear paper between neighbours, millimetres, 0 or more. */
  readonly gutterMm: number;
  /** Border that stays free on all sides, millimetres, 0 or more. */
  readonly marginMm: number;
  /** Whether pieces may be turned by 90°. */
  readonly rotate: boolean;
}

/** How long to look for a better layout. The same numbers give the same layout everywhere. */
export interface Effort {
  /** Free places looked at, about. */
  readonly steps: number;
  /** Whole number; another one looks elsewhere. */
  readonly seed: number;
}
