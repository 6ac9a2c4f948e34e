import fc from 'fast-check';
import type { ElementHandle, Locator, Page } from 'playwright-core';
import { fairPlan } from '@/tests/fixtures/stallPlan';

/* A thumb that taps the count of the fair, and what it comes to reckoned beside the app, by hand. */

/** What a thumb does: a tile by its place, or another key. */
export type Does = number | 'undo' | 'next' | 'pay';

/** @returns what one thumb does, the same for the same seed */
export const thumbOf = (seed: number, moves: number): Does[] =>
  fc.sample(
    fc.oneof(
      { arbitrary: fc.nat(fairPlan.goods.length - 1), weight: 14 },
      { arbitrary: fc.constant<Does>('undo'), weight: 2 },
      { arbitrary: fc.constant<Does>('next'), weight: 5 },
      { arbitrary: fc.constant<Does>('pay'), weight: 1 },
    ),
    { seed, numRuns: moves },
  );

/** @returns the ends of a page in the order in which they come, the same for the same seed */
export function endsOf<End extends string>(
  seed: number,
  many: Readonly<Record<End, number>>,
): readonly End[] {
  const all = Object.entries<number>(many).flatMap(([end, count]) => Array<End>(count).fill(end as End));
  const [ends = all] = fc.sample(fc.shuffledSubarray(all, { minLength: all.length }), { seed, numRuns: 1 });
  return ends;
}

/** A day as it stands after some taps: what counts is a stack, whose last goes with undo. */
export class ThumbDay {
  private readonly stack: { readonly does: Exclude<Does, 'undo'>; readonly isSale: boolean }[] = [];
  private readonly moves: Does[] = [];
  /** What lies in the store for each tap, in order. */
  readonly written: string[] = [];

  /** @returns whether the thumb would tap anything by it now */
  reckon(does: Does): boolean {
    if (does === 'undo') {
      if (this.stack.pop() === undefined) return false;
      return this.wrote(does, 'undo');
    }
    if (does === 'next' && !this.hasTicket()) return false;
    const isSale = typeof does === 'number' && this.leftOf(does) > 0;
    this.stack.push({ does, isSale });
    return this.wrote(does, typeof does === 'number' ? (isSale ? 'sale' : 'asked') : does);
  }

  /** @returns the day after its first taps alone */
  after(taps: number): ThumbDay {
    const day = new ThumbDay();
    for (const does of this.moves.slice(0, taps)) day.reckon(does);
    return day;
  }

  /** Pieces left of a tile. */
  leftOf(at: number): number {
    const sold = this.stack.filter(({ does, isSale }) => does === at && isSale).length;
    return (fairPlan.goods[at]?.bring ?? 0) - sold;
  }

  get pieces(): number {
    return this.stack.filter(({ isSale }) => isSale).length;
  }

  /** Takings, whole minor units. */
  get takenMinor(): number {
    return this.stack.reduce(
      (sum, { does, isSale }) =>
        typeof does === 'number' && isSale ? sum + (fairPlan.goods[does]?.price ?? 0) : sum,
      0,
    );
  }

  private hasTicket(): boolean {
    return this.stack
      .slice(this.stack.findLastIndex(({ does }) => does === 'next') + 1)
      .some(({ isSale }) => isSale);
  }

  private wrote(does: Does, what: string): true {
    this.moves.push(does);
    this.written.push(what);
    return true;
  }
}

export const countOn = (page: Page): Locator => page.locator('[data-stall-count]');

/** @returns the count as the page shows it now, which goes with the page: none that comes after it is tapped by it */
export async function countShownOn(page: Page): Promise<ElementHandle<Element>> {
  const count = await countOn(page).elementHandle();
  if (count === null) throw new Error('The page shows no count.');
  return count;
}

/**
 * Taps as fast as a page can be tapped, one after the other. Whenever the page says that all is kept, its `thumbKept`
 * hears how many of these taps were made until then, where there is one; that goes on after the last tap, until the
 * page goes.
 */
export const tapAll = (count: ElementHandle<Element>, taps: readonly Does[]): Promise<void> =>
  count.evaluate(async (element, all) => {
    const tiles = [...element.querySelectorAll<HTMLElement>('section button')];
    const named = (pattern: RegExp) =>
      [...element.querySelectorAll<HTMLElement>('button')].find(({ textContent }) =>
        pattern.test(textContent ?? ''),
      );
    const hear: unknown = Reflect.get(window, 'thumbKept');
    let tapped = 0;
    const tell = () => {
      const isKept = element.textContent?.includes('no signal needed · kept') === true;
      if (isKept && typeof hear === 'function') hear(tapped);
    };
    new MutationObserver(tell).observe(element, { subtree: true, childList: true, characterData: true });
    for (const does of all) {
      const key =
        typeof does === 'number'
          ? tiles[does]
          : does === 'pay'
            ? element.querySelector<HTMLElement>('[aria-pressed="false"]')
            : named(does === 'undo' ? /^Undo/ : /^Next customer/);
      key?.click();
      tapped += 1;
      await new Promise((resolve) => setTimeout(resolve, 10));
    }
  }, taps);
