import { vi } from 'vitest';

const WAIT_MS = 60_000;

/** What comes later, waited for as long as a slow machine needs: asks again until nothing is thrown. */
export const eventually = <T>(
  said: () => T | Promise<T>,
  options: { readonly interval?: number } = {},
): Promise<T> => vi.waitFor(said, { timeout: WAIT_MS, ...options });
