import { stallGoodsSchema } from './stallDay';
import { z } from './z';

const piecesSchema = z.int().min(0).max(100_000);

/** What became of some goods on a stall day, pieces. */
export const goneGoodsSchema = stallGoodsSchema.extend({
  brought: piecesSchema,
  /** Below 0 where more came back than was sold, such as a piece of an earlier fair that was exchanged. */
  sold: z.int().min(-100_000).max(100_000),
  given: piecesSchema,
  damaged: piecesSchema,
  /** Of the damaged, kept as seconds. */
  seconds: piecesSchema,
  /** Seconds kept from before that came along, and of the sold those that were of them; left out where none came. */
  keptBrought: piecesSchema.exactOptional(),
  keptSold: piecesSchema.exactOptional(),
});
