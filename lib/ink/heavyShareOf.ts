import { FLOOD_STEPS, type Picture } from '@/shared/schemas/picture';

interface MeasuredInk extends Pick<Picture, 'heavyShare'> {
  /** Null where floods were not counted. */
  readonly grey: { readonly floodShares: readonly number[] } | null;
}

/** Steps are decimals, and so are shares that are typed. */
const SLACK = 1e-9;
/** With a quarter of the grey in black no pixel ends above 3 − 2 × 0.25 = 250 %. */
const FLOODS_BELOW = 0.25;

/**
 * The share of a picture's pixels that lay down too much ink: those of two colours nearly in full, above 180 % with all
 * grey in black, and those that flood the paper. No pixel is both.
 *
 * @param blackShare share of the grey that the printer prints with black, 0–1
 */
export const heavyShareOf = (picture: MeasuredInk, blackShare: number): number =>
  Math.min(1, picture.heavyShare + floodShareOf(picture, blackShare));

/**
 * The share of pixels above 250 %, because so little of their grey is printed with black. Between two shares that were
 * counted the lower one holds, so that rather a pixel too many is told.
 */
export function floodShareOf({ grey }: Pick<MeasuredInk, 'grey'>, blackShare: number): number {
  if (blackShare >= FLOODS_BELOW - SLACK) return 0;
  const counted = FLOOD_STEPS.filter((step) => step <= blackShare + SLACK).length;
  return grey?.floodShares[counted - 1] ?? 0;
}
