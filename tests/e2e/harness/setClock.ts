import type { BrowserContext } from 'playwright-core';

/**
 * Every page of a context takes a moment for now, from which its time flows as ever. Timers stay the browser's own:
 * a faked one would swallow what is thrown in it. Workers keep the true clock, and read none.
 */
export async function setClock(context: BrowserContext, moment: string): Promise<void> {
  await context.addInitScript((aheadMs) => {
    globalThis.Date = new Proxy(Date, {
      construct: (date, given, as) =>
        Reflect.construct(date, given.length === 0 ? [date.now() + aheadMs] : given, as),
      apply: (date) => new date(date.now() + aheadMs).toString(),
      get: (date, key) => (key === 'now' ? () => date.now() + aheadMs : Reflect.get(date, key)),
    });
  }, Date.parse(moment) - Date.now());
}
