import type { Logger } from 'playwright-core';

const KEPT = 8;

let steps: string[] = [];

/** Notes what tests ask of the browser, for the report of one that fails. */
export const stepLogger: Logger = {
  isEnabled: (name) => name === 'api',
  log: (_, __, message) => {
    const text = `${message}`;
    // Of a question asked again and again, the last is enough.
    steps = [...steps.filter((step) => step !== text), text].slice(-KEPT);
  },
};

/** The last steps, oldest first, since the last call. */
export function takeSteps(): readonly string[] {
  const taken = steps;
  steps = [];
  return taken;
}
