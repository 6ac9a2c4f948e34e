/** The address that was last asked for by a link, a button or the browser's own keys, until it is reached. */
let wanted: string | null = null;
const listeners = new Set<() => void>();

export function wantPage(address: string | null): void {
  wanted = address;
  for (const listener of listeners) listener();
}

export const wantedPage = (): string | null => wanted;

export function watchWantedPage(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
