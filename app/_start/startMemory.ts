import { tabMemory } from '@/app/_tab/browserMemory';
import { type StartChoices, startChoicesSchema } from '@/lib/examples/startChoices';

const KEY = 'pressminute-start';

/** What was answered in this tab and not yet opened as a job, so that a reload finds it again. */
export const startMemory = {
  recall: (): StartChoices | null => startChoicesSchema.safeParse(tabMemory.recall(KEY)).data ?? null,
  remember(choices: StartChoices | null): void {
    tabMemory.remember(KEY, choices);
  },
};
