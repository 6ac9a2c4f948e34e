/** Fetches the sections of figures: much code, and nothing to show in it before the sums are made. */
export const fetchFigureSections = () =>
  import('./FigureSections').then(({ FigureSections }) => ({ default: FigureSections }));
