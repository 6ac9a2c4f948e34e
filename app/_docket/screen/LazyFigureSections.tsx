'use client';

import { type ComponentProps, lazy, Suspense, useEffect } from 'react';
import type { DocketFigures as Figures } from './FigureSections';
import { fetchDocketFigures } from './fetchFigureSections';

const DocketFigures = lazy(() => fetchDocketFigures().catch(() => ({ default: NotFetched })));

type DocketFiguresLaterProps = Readonly<{
  /** Null until the first sums are made. */
  parts: ComponentProps<typeof Figures> | null;
}>;

/** The sections of figures, whose code comes while the first sums are made. */
export function DocketFiguresLater({ parts }: DocketFiguresLaterProps) {
  useEffect(() => {
    // What fails now is told of where it is needed.
    void fetchDocketFigures().catch(() => undefined);
  }, []);
  if (parts === null) return null;
  return (
    <Suspense fallback={null}>
      <DocketFigures {...parts} />
    </Suspense>
  );
}

function NotFetched() {
  return <p role="alert">The figures could not be fetched. Reload the page once there is a network.</p>;
}
