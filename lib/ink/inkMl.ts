import { inchesFromMm } from '@/shared/units';

/** What the ink of one print is worked out from. */
interface PrintedInk {
  /** Sum of the channels over the print's own box, 0–4. */
  readonly total: number;
  /** The print's own box, millimetres. */
  readonly widthMm: number;
  readonly heightMm: number;
  /** Ink where one channel covers fully, mL an in². */
  readonly laydownMlPerIn2: number;
  /** Ink lost while printing, on top of what lands in the print: share, 0–1. */
  readonly loss: number;
}

/**
 * Ink of one print, without what cleaning takes.
 *
 * @returns mL
 * @example inkMl({ total: 1.4, widthMm: 304.8, heightMm: 304.8, laydownMlPerIn2: 0.0065, loss: 0 }) // 1.3104
 */
export const inkMl = ({ total, widthMm, heightMm, laydownMlPerIn2, loss }: PrintedInk): number =>
  total * inchesFromMm(widthMm) * inchesFromMm(heightMm) * laydownMlPerIn2 * (1 + loss);
