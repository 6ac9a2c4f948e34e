import type { RunResult } from './runResult';

/** A bar across the drawing, percent of its width. */
interface Across {
  readonly x: number;
  readonly width: number;
}

interface BridgeScale {
  /** Where the scale begins, whole minor units; 0 or less where it is not shortened. */
  readonly least: number;
  readonly isTorn: boolean;
  readonly from: Across;
  /** Of the bars given, in their order. */
  readonly bars: readonly Across[];
  readonly to: Across;
}

/** A bar so thin that it would not be seen is drawn this wide, percent. */
const THINNEST = 0.6;
/** Of what the bars move across, so much more is shown before the least of them. */
const ROOM_BEFORE = 0.25;
/** While less than this of the scale is saved by shortening it, it is not. */
const WORTH_TEARING = 0.5;

/**
 * How a bridge is drawn. Where profit is much more than what it moved by, the scale begins later and the long bars are
 * torn; the least that is reached always lies on it.
 *
 * @param bars those drawn, in their order
 */
export function bridgeScale(
  { from, to }: NonNullable<RunResult['bridge']>,
  bars: readonly { readonly minor: number }[],
): BridgeScale {
  const points: number[] = [from];
  for (const { minor } of bars) points.push((points.at(-1) ?? 0) + minor);
  const lowest = Math.min(...points, to);
  const most = Math.max(...points, to, 0);
  const step = roundStep((most - lowest) * ROOM_BEFORE);
  const later = Math.floor((lowest - step) / step) * step;
  const isTorn = later > most * WORTH_TEARING;
  const least = isTorn ? later : Math.min(0, lowest);
  const at = (minor: number) => ((minor - least) / (most - least || 1)) * 100;
  const across = (one: number, other: number): Across => {
    const width = Math.max(THINNEST, Math.abs(at(one) - at(other)));
    return { x: Math.min(at(one), at(other), 100 - width), width };
  };
  const start = isTorn ? least : 0;
  return {
    ...{ least, isTorn },
    from: across(start, from),
    bars: bars.map((_, index) => across(points[index] ?? 0, points[index + 1] ?? 0)),
    to: across(start, to),
  };
}

// Helpers

/** The next 1, 2 or 5 of a power of ten, at least 1. */
function roundStep(size: number): number {
  const power = 10 ** Math.floor(Math.log10(Math.max(1, size)));
  return ([1, 2, 5].find((times) => times * power >= size) ?? 10) * power;
}
