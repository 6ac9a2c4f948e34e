'use client';

import { useState } from 'react';
import { useStallStudy } from '@/app/_studies/useStallStudy';
import type { StallAsked } from '@/lib/stall/plan/stallAsked';
import type { StallFigures, StallPlan } from './stallOnScreen';

/** Asks for the plan of a stall day; the last that could be made stays in view, marked, while there is none of now. */
export function useStallFigures(wanted: StallAsked): StallFigures {
  const { newest, asked, failure } = useStallStudy('plan', wanted);
  const answer = newest?.answer ?? null;
  const [last, setLast] = useState<StallPlan | null>(null);
  const plan = answer?.kind === 'planned' ? answer : last;
  // Set while rendering: React renders again at once, and nothing is shown in between.
  if (plan !== last) setLast(plan);
  const isRefused = answer?.kind === 'refused';
  return {
    plan,
    isRefused,
    isOld: plan !== null && (newest?.asked !== asked || isRefused),
    troubles: answer?.troubles ?? [],
    failure,
  };
}
