/** Room around the plot, px: the drawing and what is laid over it agree by these. */
export const curvePlot = {
  left: 52,
  right: 18,
  top: 28,
  bottom: 28,
  heightPx: 300,
  phoneHeightPx: 250,
} as const;
