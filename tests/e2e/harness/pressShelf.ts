import type { Locator, Page } from 'playwright-core';
import { sha256OfValue } from '@/lib/stored/sha256';
import { QUIET } from '@/tests/e2e/harness/keptStore';
import { openPage } from '@/tests/e2e/harness/openPage';
import { putRows } from '@/tests/e2e/harness/stallShelf';
import { clubStandard, pieceOf, RUN, STANDARD } from '@/tests/fixtures/clubPressing';
import { FIXED_DAY } from '@/tests/tools/clock/testDay';

/* A run on the device as another device began it. */

const PRESS = `/making/${RUN}/press`;

/** Who began the run. */
const OTHER = 'otherdevice0';
const SIX = Date.parse(`${FIXED_DAY}T06:00:00Z`);

/** A device on which the run was begun, at the press. */
export async function atThePress(width: number, keptFrom?: string): Promise<Page> {
  const page = await openPage({ width, path: '/workshop', ...(keptFrom === undefined ? {} : { keptFrom }) });
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.goto(QUIET);
  await layStandard(page);
  await page.goto(PRESS);
  await page.getByRole('heading', { level: 1, name: 'Ramblers: Back' }).waitFor();
  return page;
}

/** A key of the press. */
export const pressKey = (page: Page, name: RegExp): Locator =>
  page.locator('[data-press]').getByRole('button', { name });

/** The last tap at the press is on the device. */
export const pressKept = (page: Page): Promise<void> => page.getByText(/^no signal needed · kept/).waitFor();

/**
 * Pieces of a print are good, as another device noted them one a minute; the page comes back to the press.
 *
 * @param left so many of the first size are still to press
 */
export async function pressAll(page: Page, placementId: 'back' | 'badge', left = 0): Promise<void> {
  await page.goto(QUIET);
  const wanted = clubStandard.works.flatMap(({ lines }) => lines.flatMap(({ sizes }) => sizes));
  const pieces = wanted.flatMap((of) =>
    Array.from({ length: of.wanted }, () => pieceOf(of.size, 'good', { placementId })),
  );
  const noted = pieces.slice(left);
  const from = placementId === 'back' ? 10 : 100;
  await putRows(page, {
    papers: [],
    entries: noted.map((body, at) => ({
      ...{ id: `${OTHER}-${from + at}`, kind: 'pressing', version: 1, device: OTHER, count: from + at },
      ...{ at: SIX + (from + at) * 60_000, body },
    })),
  });
  await page.goto(PRESS);
}

/** What this device noted at the press and did not take back, in its order: “good M”, “scrap L ghost”. */
export const pressedOn = (page: Page): Promise<readonly string[]> =>
  page.evaluate(
    (other) =>
      new Promise<string[]>((resolve, reject) => {
        const request = indexedDB.open('pressminute');
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const asked = request.result.transaction(['entries']).objectStore('entries').getAll();
          asked.onsuccess = () => {
            request.result.close();
            const own = asked.result.filter(({ device }) => device !== other);
            const out = new Set(own.flatMap(({ kind, body }) => (kind === 'takeBack' ? [body.entryId] : [])));
            resolve(
              own
                .filter(({ id, kind }) => kind === 'pressing' && !out.has(id))
                .sort((one, next) => one.count - next.count)
                .map(({ body: { result, size, fault } }) => [result, size, fault ?? ''].join(' ').trim()),
            );
          };
        };
      }),
    OTHER,
  );

// Helpers

/** Lays the standard of the run on the device, past the app, which was here before. The page is at `QUIET`. */
async function layStandard(page: Page): Promise<void> {
  const counted = (count: number) => ({ id: `${OTHER}-${count}`, version: 1, device: OTHER, count, at: SIX });
  await putRows(page, {
    papers: [
      {
        ...{ ...counted(1), kind: 'runStandard', series: `run ${RUN}`, number: clubStandard.number },
        ...{ about: { kind: 'run', id: RUN }, sha256: sha256OfValue(clubStandard), file: null },
        body: clubStandard,
      },
    ],
    entries: [{ ...counted(2), kind: 'issuing', body: { paperId: STANDARD } }],
  });
}
