import type { Page } from 'playwright-core';

/** A fifth of what counts as a page that stands still: 0.1 is the limit in common use. */
export const MOST_SHIFT = 0.02;

/** How a page came and moved since it was watched. */
interface Pace {
  /** What moved without being asked, as browsers count it: share of the screen times way, added up. */
  readonly shift: number;
  /** The largest of them, each with what moved. */
  readonly moved: readonly string[];
  /** Tasks over 50 ms on the page's own thread, longest first, in ms. */
  readonly longTasks: readonly number[];
}

/** Notes from the first moment of every page to come what moves on it and what blocks it. */
export async function watchPace(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const shifts: { value: number; moved: string }[] = [];
    const tasks: number[] = [];
    Reflect.set(window, 'pace', { shifts, tasks });
    const told = (node: Node | null) => {
      const element = node instanceof Element ? node : (node?.parentElement ?? null);
      const near = element?.closest('[id]')?.id ?? '';
      return `${element?.tagName.toLowerCase() ?? 'gone'}.${element?.className ?? ''} in #${near}`;
    };
    const rect = (box: DOMRectReadOnly) => `${box.x | 0},${box.y | 0} ${box.width | 0}x${box.height | 0}`;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) {
        if (!('value' in entry) || typeof entry.value !== 'number') continue;
        const sources: unknown = 'sources' in entry ? entry.sources : [];
        const moved = (Array.isArray(sources) ? sources : []).map(
          (one) => `${told(one.node)} ${rect(one.previousRect)} to ${rect(one.currentRect)}`,
        );
        shifts.push({ value: entry.value, moved: moved.join('; ') });
      }
    }).observe({ type: 'layout-shift', buffered: true });
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) tasks.push(duration);
    }).observe({ type: 'longtask', buffered: true });
  });
}

/** What was noted since the page was opened, or since this was last asked. */
export async function takePace(page: Page): Promise<Pace> {
  return page.evaluate(async () => {
    // Entries gathered so far come before the next frame but one.
    await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
    const { shifts, tasks } = Reflect.get(window, 'pace');
    const taken: { value: number; moved: string }[] = shifts.splice(0);
    const long: number[] = tasks.splice(0);
    return {
      shift: taken.reduce((sum, { value }) => sum + value, 0),
      moved: taken
        .toSorted((one, other) => other.value - one.value)
        .slice(0, 4)
        .map(({ value, moved }) => `${value.toFixed(4)}: ${moved}`),
      longTasks: long.toSorted((one, other) => other - one).map(Math.round),
    };
  });
}
