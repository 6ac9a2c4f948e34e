/** Opens a file in a tab of its own, as the kind that the blob names and as nothing else. */
export function openBlob(content: Blob): void {
  const url = URL.createObjectURL(content);
  const link = document.createElement('a');
  link.href = url;
  link.target = '_blank';
  link.rel = 'noopener';
  link.click();
  // The new tab reads it once.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
