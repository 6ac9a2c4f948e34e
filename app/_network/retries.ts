/** Waits between tries, in milliseconds: short at first, and never longer than the last. */
const WAITS_MS = [1_000, 2_000, 4_000, 8_000, 15_000, 30_000, 60_000] as const;
const LONGEST_WAIT_MS = 60_000;

interface Retries {
  /** A try has failed: the next comes after a wait, or at once when the network comes back. */
  readonly failed: () => void;
  /** A try has come through: the next failure starts with the shortest wait again. */
  readonly worked: () => void;
  /** Does not wait any longer. */
  readonly now: () => void;
  /** Gives up what is planned. */
  readonly stop: () => void;
}

/** @param tryAgain one try; it tells by `failed` or `worked` what came of it */
export function createRetries(tryAgain: () => void): Retries {
  let failures = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const stop = (): void => {
    clearTimeout(timer);
    timer = undefined;
    globalThis.removeEventListener?.('online', now);
  };
  const now = (): void => {
    stop();
    tryAgain();
  };
  return {
    failed() {
      stop();
      timer = setTimeout(now, WAITS_MS[failures] ?? LONGEST_WAIT_MS);
      globalThis.addEventListener?.('online', now);
      failures += 1;
    },
    worked() {
      failures = 0;
      stop();
    },
    now,
    stop,
  };
}
