'use client';

import { CauseList } from '@/app/_runBook/CauseList';
import type { AtThePress } from '../usePressing';

/** Pieces that were lost and nobody said why. */
export const CausesPanel = ({ pressing }: Readonly<{ pressing: AtThePress }>) => (
  <CauseList run={pressing.run} onName={pressing.nameFault} />
);
