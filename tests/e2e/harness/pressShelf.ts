import type { Page } from 'playwright-core';
import { sha256OfValue } from '@/lib/stored/sha256';
import { putRows } from '@/tests/e2e/harness/stallShelf';
import { clubStandard, RUN, STANDARD } from '@/tests/fixtures/clubPressing';
import { FIXED_DAY } from '@/tests/tools/clock/testDay';

/* A run on the device as another device began it. */

export const PRESS = `/making/${RUN}/press`;

/** Who began the run. */
const OTHER = 'otherdevice0';

/** Lays the standard of the run on the device, past the app, which was here before. The page is at `QUIET`. */
export async function layStandard(page: Page): Promise<void> {
  const at = Date.parse(`${FIXED_DAY}T06:00:00Z`);
  const counted = (count: number) => ({ id: `${OTHER}-${count}`, version: 1, device: OTHER, count, at });
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
