'use client';

import { TestForm } from '@/app/_pressLog/TestForm';
import type { AtThePress } from '../usePressing';

type TestPanelProps = Readonly<{ pressing: AtThePress; onDone: () => void }>;

/** A test press with the recipe of the print that is up. */
export function TestPanel({ pressing, onDone }: TestPanelProps) {
  const { workspace, runId, turn, steps } = pressing;
  const { recipe, pressId, position, artworkId } = turn.placement;
  const heated = steps.findLast(({ body }) => body.step.what === 'heated')?.body.step;
  const measured = heated?.what === 'heated' ? heated : null;
  const use = { recipe, pressId, blankId: turn.blankId };
  const of = { runId, jobId: turn.jobId, position, artworkId };
  return <TestForm {...{ workspace, use, of, measured, onDone }} />;
}
