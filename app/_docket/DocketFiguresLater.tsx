'use client';

import type { ComponentProps } from 'react';
import { PartMissing } from '../_network/PartMissing';
import { useLater } from '../_network/useLater';
import type { DocketFigures as Figures } from './DocketFigures';
import { laterDocketFigures } from './laterDocketFigures';

type DocketFiguresLaterProps = Readonly<{
  /** Null until the first sums are made. */
  parts: ComponentProps<typeof Figures> | null;
}>;

/** The sections of figures, whose code comes while the first sums are made. */
export function DocketFiguresLater({ parts }: DocketFiguresLaterProps) {
  const fetched = useLater(laterDocketFigures);
  if (parts === null || fetched.kind === 'coming') return null;
  if (fetched.kind === 'missing') return <PartMissing what="The part with the figures" missing={fetched} />;
  const DocketFigures = fetched.value;
  return <DocketFigures {...parts} />;
}
