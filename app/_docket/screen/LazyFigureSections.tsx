'use client';

import { lazy } from '@/app/_network/lazy';
import { PartMissing } from '@/app/_network/PartMissing';
import { useLazy } from '@/app/_network/useLazy';

/** Much code, and nothing to show in it before the sums are made. */
const lazyFigureSections = lazy(() =>
  import('./FigureSections').then(({ FigureSections }) => FigureSections),
);

/** The sections of figures, whose code comes while the first sums are made. */
export function LazyFigureSections({ isWanted }: Readonly<{ isWanted: boolean }>) {
  const fetched = useLazy(lazyFigureSections);
  if (!isWanted || fetched.kind === 'coming') return null;
  if (fetched.kind === 'missing') return <PartMissing what="The part with the figures" missing={fetched} />;
  const FigureSections = fetched.value;
  return <FigureSections />;
}
