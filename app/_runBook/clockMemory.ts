import { deviceMemory } from '@/app/_tab/browserMemory';
import { workElements } from '@/shared/schemas/making/runEvents';
import { z } from '@/shared/schemas/z';

const runningSchema = z.strictObject({ element: z.enum(workElements), startedAt: z.number() });

/** A clock that runs: for what, and since when, ms since 1970. */
export type RunningClock = z.infer<typeof runningSchema>;

/** The clock of a run; kept on the device until it is stopped, so that a reload or a dead battery does not lose it. */
export const clockMemory = {
  recall: (runId: string): RunningClock | null =>
    runningSchema.safeParse(deviceMemory.recall(keyOf(runId))).data ?? null,
  /** @returns whether a reload would find it */
  remember: (runId: string, clock: RunningClock | null): boolean =>
    deviceMemory.remember(keyOf(runId), clock),
};

// Helpers

const keyOf = (runId: string): string => `pressminute-clock ${runId}`;
