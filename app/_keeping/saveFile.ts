/** Hands the maker a file; it never leaves the device. */
export function saveFile(name: string, content: unknown): void {
  const url = URL.createObjectURL(new Blob([JSON.stringify(content, null, 2)], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // Some browsers read the address only after this turn is over.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
