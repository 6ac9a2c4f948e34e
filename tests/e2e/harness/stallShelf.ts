import type { Page } from 'playwright-core';
import { planSeries } from '@/lib/stall/car/plansOf';
import { sha256OfValue } from '@/lib/stored/sha256';
import type { Tap } from '@/shared/schemas/stallEvents';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { FIXED_DAY } from '@/tests/tools/clock/testDay';

/* A stall day on the device as another device left it: its plan, and what was tapped there. */

export const COUNT = `/stall/${fairPlan.stallDayId}/count`;

export const EVENING = `/stall/${fairPlan.stallDayId}/evening`;

/** Who fixed the plan. */
const OTHER = 'otherdevice0';
const planIdOf = (device: string) => `${device}-1`;
const SIX = Date.parse(`${FIXED_DAY}T06:00:00Z`);

/**
 * Lays the plan of the fair on the device, past the app, which was here before. The page is at `QUIET`.
 *
 * @param told who fixed it, and how long after six, ms
 */
export async function layPlan(
  page: Page,
  plan: StallPlan = fairPlan,
  { device = OTHER, laterMs = 0 }: Readonly<{ device?: string; laterMs?: number }> = {},
): Promise<void> {
  const at = SIX + laterMs;
  const counted = (count: number) => ({ id: `${device}-${count}`, version: 1, device, count, at });
  const body = { ...plan, number: { count: 1, letter: 'Z' } };
  const { stallDayId } = plan;
  await putRows(page, {
    papers: [
      {
        ...counted(1),
        kind: 'stallPlan',
        series: planSeries(stallDayId),
        number: body.number,
        about: { kind: 'stallDay', id: stallDayId },
        sha256: sha256OfValue(body),
        file: null,
        body,
      },
    ],
    entries: [{ ...counted(2), kind: 'issuing', body: { paperId: planIdOf(device) } }],
  });
}

/** Lays taps beside it, one a second from ten on. */
export const layTaps = (page: Page, taps: readonly Tap[]): Promise<void> =>
  putRows(page, {
    papers: [],
    entries: taps.map((tap, at) => ({
      id: `${OTHER}-${at + 10}`,
      kind: 'stallTap',
      version: 1,
      device: OTHER,
      count: at + 10,
      at: SIX + at * 1000,
      body: { stallDayId: fairPlan.stallDayId, planId: planIdOf(OTHER), currency: fairPlan.currency, tap },
    })),
  });

/** What was tapped on this device in its order, as it lies in the store: sales and the like, and what takes them back. */
export const tapsOn = (page: Page): Promise<readonly string[]> =>
  page.evaluate(
    (other) =>
      new Promise<string[]>((resolve, reject) => {
        const request = indexedDB.open('pressminute');
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const asked = request.result.transaction(['entries']).objectStore('entries').getAll();
          asked.onsuccess = () => {
            request.result.close();
            const own = asked.result
              .filter(({ device, kind }) => device !== other && (kind === 'stallTap' || kind === 'takeBack'))
              .sort((one, next) => one.count - next.count);
            resolve(own.map(({ kind, body }) => (kind === 'takeBack' ? 'undo' : body.tap.what)));
          };
        };
      }),
    OTHER,
  );

/** Puts rows on the device past the app, which was here before. */
export const putRows = (page: Page, rows: Rows): Promise<void> =>
  page.evaluate(
    ({ papers, entries }) =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open('pressminute');
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const writing = request.result.transaction(['papers', 'entries'], 'readwrite');
          for (const row of papers) writing.objectStore('papers').put(row);
          for (const row of entries) writing.objectStore('entries').put(row);
          writing.onerror = () => reject(writing.error);
          writing.oncomplete = () => {
            request.result.close();
            resolve();
          };
        };
      }),
    rows,
  );

// Helpers

interface Rows {
  readonly papers: readonly object[];
  readonly entries: readonly object[];
}
