'use client';

import { useState } from 'react';
import { steadyAsks } from './steadyAsks';
import type { StudyName } from './studies';
import type { StudyAsk } from './useStudies';

/** @returns the questions, as the same objects for as long as each asks the same of the same documents. */
export function useSteadyAsks<Name extends StudyName>(
  asks: readonly StudyAsk<Name>[],
): readonly StudyAsk<Name>[] {
  const [before, setBefore] = useState(asks);
  const steady = steadyAsks(before, asks);
  // Set while rendering: React renders again at once, and nothing is shown in between.
  if (steady !== before) setBefore(steady);
  return steady;
}
