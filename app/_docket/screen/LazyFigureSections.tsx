'use client';

import type { ComponentProps } from 'react';
import { PartMissing } from '@/app/_network/PartMissing';
import { useLazy } from '@/app/_network/useLazy';
import type { FigureSections as Figures } from './FigureSections';
import { lazyFigureSections } from './lazyFigureSections';

type LazyFigureSectionsProps = Readonly<{
  /** Null until the first sums are made. */
  parts: ComponentProps<typeof Figures> | null;
}>;

/** The sections of figures, whose code comes while the first sums are made. */
export function LazyFigureSections({ parts }: LazyFigureSectionsProps) {
  const fetched = useLazy(lazyFigureSections);
  if (parts === null || fetched.kind === 'coming') return null;
  if (fetched.kind === 'missing') return <PartMissing what="The part with the figures" missing={fetched} />;
  const FigureSections = fetched.value;
  return <FigureSections {...parts} />;
}
