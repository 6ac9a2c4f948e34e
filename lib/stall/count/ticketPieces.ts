import { goodsKey } from '@/lib/stall/goodsKey';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { StallPay } from '@/shared/schemas/stallEvents';
import type { TicketLine } from './ticketLines';

/** A piece that goes with the customer. */
export interface TicketPiece {
  readonly goods: StallGoods;
  /** What it costs there, as prices write it; whole minor units. */
  readonly minor: number;
  readonly pay: StallPay;
  readonly joinsSet: boolean;
}

/**
 * What of a ticket was bought and stays so: a piece that came back takes the one away that was sold before it on the
 * same ticket, at what was given back where there is one. One that was sold to an earlier customer takes none away. An
 * exchange puts the other piece in its place, at what both came to.
 *
 * @param lines of one currency, in order
 */
export function ticketPieces(lines: readonly TicketLine[]): readonly TicketPiece[] {
  const pieces: TicketPiece[] = [];
  /** @returns the piece of some goods that comes off the ticket; null where none is on it */
  const takeOff = (goods: StallGoods, minor: number | null): TicketPiece | null => {
    const isOf = (piece: TicketPiece) => goodsKey(piece.goods) === goodsKey(goods);
    const paidSo = pieces.findLastIndex((piece) => isOf(piece) && piece.minor === minor);
    const at = paidSo >= 0 ? paidSo : pieces.findLastIndex(isOf);
    return at < 0 ? null : (pieces.splice(at, 1)[0] ?? null);
  };
  for (const { goods, back, pieces: count, minor, pay, joinsSet } of lines) {
    if (goods === null) continue;
    if (count > 0) pieces.push({ goods, minor, pay, joinsSet });
    else if (back === null) takeOff(goods, -minor);
    else {
      const came = takeOff(back, null);
      if (came !== null) pieces.push({ ...came, goods, minor: came.minor + minor });
    }
  }
  return pieces;
}
