import { type StartChoices, startChoicesSchema } from '@/lib/examples/startChoices';

const KEY = 'pressminute-start';

/** What was answered in this tab and not yet opened as a job, so that a reload finds it again. */
export const startMemory = {
  recall(): StartChoices | null {
    try {
      const kept: unknown = JSON.parse(sessionStorage.getItem(KEY) ?? 'null');
      return startChoicesSchema.safeParse(kept).data ?? null;
    } catch {
      // Forbidden by the browser, or not ours; then the answers begin anew.
      return null;
    }
  },
  remember(choices: StartChoices | null): void {
    try {
      if (choices === null) sessionStorage.removeItem(KEY);
      else sessionStorage.setItem(KEY, JSON.stringify(choices));
    } catch {
      // As above.
    }
  },
};
