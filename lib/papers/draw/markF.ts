import type { Reads } from '@/lib/papers/paper';

/** Of the mark in its own measure, which its paths are written in; y down from its top. */
const MARK_F = { wide: 60, high: 100 } as const;

/** An F stands for a picture that cannot be shown: turned over it is no letter, so nobody takes one way for the other. */
export const markF: Readonly<Record<Reads, string>> = {
  right: 'M0 0H60V18H20V42H50V60H20V100H0Z',
  reversed: 'M60 0H0V18H40V42H10V60H40V100H60Z',
};

interface Box {
  readonly width: number;
  readonly height: number;
}

/** @returns where the mark stands in the middle of a box, from its upper left corner, and how much it is grown. */
export function placeMarkF({ width, height }: Box) {
  const scale = Math.min((0.6 * height) / MARK_F.high, (0.6 * width) / MARK_F.wide);
  return {
    x: (width - scale * MARK_F.wide) / 2,
    y: (height - scale * MARK_F.high) / 2,
    scale,
  };
}
