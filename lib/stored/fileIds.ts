/**
 * Ids of files that anything in some rows names, however deep, so that records nothing can read keep theirs. Papers
 * name theirs by its SHA-256, under which it is kept.
 */
export function fileIdsIn(rows: readonly unknown[]): ReadonlySet<string> {
  const ids = new Set<string>();
  const waiting: unknown[] = [...rows];
  while (waiting.length > 0) {
    const part = waiting.pop();
    if (typeof part !== 'object' || part === null) continue;
    for (const [key, value] of Object.entries(part)) {
      if ((key === 'fileId' || key === 'sha256') && typeof value === 'string') ids.add(value);
      else waiting.push(value);
    }
  }
  return ids;
}
