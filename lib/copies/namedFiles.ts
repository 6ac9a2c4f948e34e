import { isPlainObject } from '@/lib/merging/sameValue';
import { sha256Schema } from '@/shared/schemas/happened';
import type { CopyFile } from './copy';

/**
 * The files that anything in some records names, however deep, so that records nothing can read keep theirs: pictures
 * by `fileId`, what went out as a paper's `file`.
 */
export function namedFiles(records: readonly unknown[]): readonly CopyFile[] {
  const files = new Map<string, CopyFile>();
  const waiting: unknown[] = [...records];
  while (waiting.length > 0) {
    const part = waiting.pop();
    if (Array.isArray(part)) for (const item of part) waiting.push(item);
    if (!isPlainObject(part)) continue;
    const file = fileOf(part);
    if (file !== null && !files.has(file.sha256)) files.set(file.sha256, file);
    for (const value of Object.values(part)) {
      if (typeof value === 'object') waiting.push(value);
    }
  }
  return [...files.values()].toSorted((one, other) => (one.sha256 < other.sha256 ? -1 : 1));
}

function fileOf(part: Readonly<Record<string, unknown>>): CopyFile | null {
  const id = sha256Schema.safeParse(part.fileId ?? part.sha256);
  const name = part.fileId === undefined ? part.name : part.fileName;
  if (!id.success || (part.fileId === undefined && typeof part.bytes !== 'number')) return null;
  return {
    sha256: id.data,
    name: typeof name === 'string' && name !== '' ? name.slice(0, 200) : id.data.slice(0, 12),
    bytes: typeof part.bytes === 'number' && Number.isSafeInteger(part.bytes) ? Math.max(0, part.bytes) : 0,
  };
}
