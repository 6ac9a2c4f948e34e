import { later } from '@/app/_network/later';

/** The sections of figures: much code, and nothing to show in it before the sums are made. */
export const laterDocketFigures = later(() =>
  import('@/app/_docket/screen/FigureSections').then(({ FigureSections }) => FigureSections),
);
