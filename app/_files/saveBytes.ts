/** Hands the maker a file; it never leaves the device. */
export function saveBytes(name: string, bytes: Uint8Array, type: string): void {
  const url = URL.createObjectURL(new Blob([new Uint8Array(bytes)], { type }));
  const link = document.createElement('a');
  link.href = url;
  // Signs that some systems do not take in a file's name.
  link.download = name.replace(/[\\/:*?"<>|]+/g, ' ');
  link.click();
  // Some browsers read the address only after this turn is over.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
