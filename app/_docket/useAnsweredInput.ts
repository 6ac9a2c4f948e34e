'use client';

import { useState } from 'react';
import type { JobInput } from '@/shared/schemas/request';
import type { DocketPart } from './docketPart';

/** The documents that the shown answer was made of: last good figures are named after what they were made of. */
export function useAnsweredInput({ input, answer, stale }: DocketPart): JobInput {
  const [made, setMade] = useState({ answer, input });
  if (answer === made.answer) return made.input;
  const next = { answer, input: stale ? made.input : input };
  setMade(next);
  return next.input;
}
