'use client';

import { type ComponentProps, lazy, Suspense, useEffect } from 'react';
import type { FigureSections as Figures } from './FigureSections';
import { fetchFigureSections } from './fetchFigureSections';

const FigureSections = lazy(() => fetchFigureSections().catch(() => ({ default: NotFetched })));

type LazyFigureSectionsProps = Readonly<{
  /** Null until the first sums are made. */
  parts: ComponentProps<typeof Figures> | null;
}>;

/** The sections of figures, whose code comes while the first sums are made. */
export function LazyFigureSections({ parts }: LazyFigureSectionsProps) {
  useEffect(() => {
    // What fails now is told of where it is needed.
    void fetchFigureSections().catch(() => undefined);
  }, []);
  if (parts === null) return null;
  return (
    <Suspense fallback={null}>
      <FigureSections {...parts} />
    </Suspense>
  );
}

function NotFetched() {
  return <p role="alert">The figures could not be fetched. Reload the page once there is a network.</p>;
}
