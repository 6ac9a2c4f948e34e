import { usePlotArea, useXAxisScale, useYAxisScale } from 'recharts';
import type { Box } from './placeLabels';

/** Where values come to lie on a drawing, px. */
interface Plot extends Box {
  readonly xOf: (n: number) => number;
  readonly yOf: (value: number) => number;
}

/** @returns the plot of the chart around it; null until its axes stand. */
export function usePlot(): Plot | null {
  const area = usePlotArea();
  const across = useXAxisScale();
  const up = useYAxisScale();
  if (area === undefined || across === undefined || up === undefined) return null;
  return {
    left: area.x,
    right: area.x + area.width,
    top: area.y,
    bottom: area.y + area.height,
    xOf: (n) => across(n) ?? 0,
    yOf: (value) => up(value) ?? 0,
  };
}
