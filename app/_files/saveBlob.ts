/** Hands the maker a file; it never leaves the device. */
export function saveBlob(name: string, content: Blob): void {
  const url = URL.createObjectURL(content);
  const link = document.createElement('a');
  link.href = url;
  link.download = fileName(name);
  link.click();
  // Some browsers read the address only after this turn is over.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

/** @returns a name without the signs that some systems do not take in a file's name, and without the gaps they leave. */
export const fileName = (name: string): string => name.replace(/[\\/:*?"<>|]+/g, ' ').replace(/ {2,}/g, ' ');
