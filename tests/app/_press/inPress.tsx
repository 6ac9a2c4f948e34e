import { act } from '@testing-library/react';
import type { Lazy } from '@/app/_network/lazy';
import { laterParts } from '@/app/_press/laterParts';
import { PressScreen } from '@/app/_press/PressScreen';
import type { Pressing } from '@/shared/schemas/making/runEvents';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import { enter, screenStore } from '@/tests/app/_screens/screens';
import { clubStandard, RUN } from '@/tests/fixtures/clubPressing';

/** Opens the store as any screen does, and begins the run. */
export async function beginRun(more: Partial<RunStandard> = {}): Promise<string> {
  await act(() => screenStore().open());
  const outcome = await act(() =>
    screenStore().actions.issue('Run', {
      kind: 'runStandard',
      about: { kind: 'run', id: RUN },
      series: `run ${RUN}`,
      body: (number) => ({ ...clubStandard, number, ...more }),
    }),
  );
  if (outcome.state !== 'issued') throw new Error(`the standard was not issued: ${outcome.state}`);
  return outcome.paper.id;
}

/** Enters the press, with the parts that come later. */
export async function enterPress(): Promise<void> {
  await Promise.all(Object.values(laterParts).map((part: Lazy<unknown>) => part.fetch()));
  await enter(<PressScreen runId={RUN} />);
}

/** What was pressed and counts. */
export const pressed = (): readonly Pressing[] =>
  screenStore()
    .getState()
    .entries.pressing.map(({ body }) => body);
