/** Room around the plot, px: the drawing and what is laid over it agree by these. */
export interface PlotMargins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Mean advance of a figure, as a share of the page's own letter. */
const FIGURE = 0.5;

/**
 * @param letterPx size of the page's own letter, which the maker may have made larger
 * @param ticks what is written beside the drawing
 */
export function plotMargins(letterPx: number, ticks: readonly string[]): PlotMargins {
  const longest = Math.max(0, ...ticks.map((tick) => tick.length));
  return {
    left: Math.ceil(letterPx * (FIGURE * longest + 0.9)),
    right: Math.ceil(letterPx * 1.1),
    // A line of words above, and beneath the figures another.
    top: Math.ceil(letterPx * 2),
    bottom: Math.ceil(letterPx * 2.9),
  };
}
