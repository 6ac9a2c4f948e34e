import type { RulerBounds } from './rulerMark';

/** Room to raise the price beyond the last mark. */
const headroom = 1.1;

/** A bar from nothing to a round figure beyond the highest value, so that it does not shift with every cent. */
export function rulerBounds(values: readonly number[]): RulerBounds {
  const reach = Math.max(0, ...values) * headroom;
  if (reach === 0) return { min: 0, max: 1 };
  const size = 10 ** Math.floor(Math.log10(reach));
  const unit = (size / 10) * (reach < 2 * size ? 1 : reach < 5 * size ? 2.5 : 5);
  return { min: 0, max: Number((Math.ceil(Number((reach / unit).toFixed(9))) * unit).toFixed(6)) };
}
