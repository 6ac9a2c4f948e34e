import type { LaidOutPrint } from './laidOutPrint';

/**
 * How many pieces share the sheets of a print. On sheets shared with other prints these are the pieces of this one
 * that would cover as much: another batch is taken to fill its sheets as well as the layout does.
 *
 * @param batch good pieces of its line; the other lines stay as asked
 * @param linePieces good pieces of its line as laid out
 */
export function groupAt({ pieces, ganged }: LaidOutPrint, batch: number, linePieces: number): number {
  if (ganged !== undefined)
    return ganged.others + (batch === linePieces ? ganged.own : (ganged.own * batch) / linePieces);
  return pieces === linePieces ? batch : (batch * pieces) / linePieces;
}
