import type { Page } from 'playwright-core';
import { backendTables } from '@/app/_backend/backend';
import dump from '@/tests/fixtures/stored/storeBeforeEntries.json' with { type: 'json' };

/** An address of the app's own place at which the app does not run: its store can be touched there from outside. */
export const QUIET = '/api/health';

const STORE = 'pressminute';
const FORMER_TABLES = ['documents', 'steps', 'contents', 'meta', 'aside', 'files'] as const;

/** Puts the store on the device as the build before entries left it, row by row. The page is at `QUIET`. */
export async function leaveFormerStore(page: Page): Promise<void> {
  const tables = FORMER_TABLES.map((name) => ({ name, key: backendTables[name], rows: dump.tables[name] }));
  await page.evaluate(
    ({ name, version, all }) =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open(name, version);
        request.onerror = () => reject(request.error);
        request.onupgradeneeded = () => {
          for (const table of all) {
            const store = request.result.createObjectStore(table.name, { keyPath: table.key });
            for (const row of table.rows) {
              const content = 'content' in row ? row.content : null;
              store.put(
                content !== null && typeof content === 'object' && 'base64' in content
                  ? { ...row, content: Uint8Array.from(atob(content.base64), (one) => one.charCodeAt(0)) }
                  : row,
              );
            }
          }
        };
        request.onsuccess = () => {
          request.result.close();
          resolve();
        };
      }),
    { name: STORE, version: dump.version, all: tables },
  );
}

/** Holds the store open in its former version, as a tab does that hears nothing. The page is at `QUIET`. */
export async function holdFormerStore(page: Page): Promise<void> {
  await page.evaluate(
    ([name, version]) =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open(name, version);
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          Reflect.set(window, 'heldStore', request.result);
          resolve();
        };
      }),
    [STORE, dump.version] as const,
  );
}

/**
 * Lets nothing be written into the store, as if the disk were slow.
 *
 * @returns lets go of it
 */
export async function holdWrites(page: Page): Promise<() => Promise<void>> {
  await page.evaluate(
    (name) =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open(name);
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const db = request.result;
          const tables = [...db.objectStoreNames];
          const writing = db.transaction(tables, 'readwrite');
          writing.oncomplete = () => db.close();
          Reflect.set(window, 'holdsWrites', true);
          // A transaction ends where nothing more is asked of it.
          const goOn = () => {
            resolve();
            if (Reflect.get(window, 'holdsWrites') !== true) return;
            writing.objectStore(tables[0] ?? '').count().onsuccess = goOn;
          };
          goOn();
        };
      }),
    STORE,
  );
  return () => page.evaluate(() => void Reflect.set(window, 'holdsWrites', false));
}

/** Clears the store as a browser does that needs room; the small storage stays. Ends on the page at `QUIET`. */
export async function wipeStore(page: Page): Promise<void> {
  await page.goto(QUIET);
  await page.evaluate(
    (name) =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.deleteDatabase(name);
        request.onerror = () => reject(request.error);
        request.onsuccess = () => resolve();
      }),
    STORE,
  );
}

/** Keys of every row of some tables, past the app. */
export const keysOn = (page: Page, tables: readonly string[]): Promise<readonly string[]> =>
  page.evaluate(
    ([name, all]) =>
      new Promise<string[]>((resolve, reject) => {
        const request = indexedDB.open(name);
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const db = request.result;
          const reading = db.transaction([...all]);
          const keys: string[] = [];
          for (const table of all) {
            const asked = reading.objectStore(table).getAllKeys();
            asked.onsuccess = () => keys.push(...asked.result.map((key) => `${table} ${String(key)}`));
          }
          reading.oncomplete = () => {
            db.close();
            resolve(keys.sort());
          };
        };
      }),
    [STORE, tables] as const,
  );
