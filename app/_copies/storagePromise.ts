import type { StoragePromise, StorageRoom } from '@/app/_words/store/storagePromiseWords';

const ASKED = 'pressminute-asked-to-keep';

let answer: StoragePromise | null = null;
const listeners = new Set<() => void>();

function told(next: StoragePromise): void {
  answer = next;
  for (const listener of listeners) listener();
}

/** Whether the browser promises to keep what is here; one answer for the whole page. */
export const storagePromise = {
  subscribe(listener: () => void): () => void {
    listeners.add(listener);
    return () => listeners.delete(listener);
  },
  /** Null until it was looked up. */
  here: (): StoragePromise | null => answer,
  /** Looks the answer up without asking anybody. */
  async look(): Promise<void> {
    told(await answerOf((storage) => storage.persisted()));
  },
  /** Asks the browser, which may ask the maker: once a visit, when there is something to keep. */
  async ask(): Promise<void> {
    if (wasAsked()) return this.look();
    told(await answerOf((storage) => storage.persist()));
  },
};

/** @returns the room used and given; null where the browser does not say. */
export async function storageRoom(): Promise<StorageRoom | null> {
  const storage = storageManager();
  if (storage === undefined) return null;
  try {
    const { usage, quota } = await storage.estimate();
    return usage === undefined || quota === undefined ? null : { usedBytes: usage, quotaBytes: quota };
  } catch {
    // Some browsers refuse to say; the words tell so.
    return null;
  }
}

// Helpers

/** Missing in old browsers, and on pages that are called insecure. */
const storageManager = (): StorageManager | undefined => Reflect.get(navigator, 'storage') ?? undefined;

async function answerOf(ask: (storage: StorageManager) => Promise<boolean>): Promise<StoragePromise> {
  const storage = storageManager();
  if (storage === undefined) return 'unknown';
  try {
    return (await ask(storage)) ? 'promised' : 'mayClear';
  } catch {
    // A browser that refuses the question has promised nothing, and not said that it clears anything.
    return 'unknown';
  }
}

/** Remembers for the visit that it was asked, so that no reload asks the maker again. */
function wasAsked(): boolean {
  try {
    if (sessionStorage.getItem(ASKED) !== null) return true;
    sessionStorage.setItem(ASKED, 'yes');
    return false;
  } catch {
    // Where the browser remembers nothing for us, it remembers its own answer.
    return false;
  }
}
