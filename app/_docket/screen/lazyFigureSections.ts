import { lazy } from '@/app/_network/lazy';

/** The sections of figures: much code, and nothing to show in it before the sums are made. */
export const lazyFigureSections = lazy(() =>
  import('./FigureSections').then(({ FigureSections }) => FigureSections),
);
