/** Fetches the sections of figures: much code, and nothing to show in it before the sums are made. */
export const fetchDocketFigures = () =>
  import('./FigureSections').then(({ DocketFigures }) => ({ default: DocketFigures }));
