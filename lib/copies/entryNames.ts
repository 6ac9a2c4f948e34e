import type { ArchiveEntry } from './archive/archiveEntry';
import type { RefusedEntry } from './copy';

export const TEXT_NAME = 'documents.json';
const FILE_NAME = /^files\/([0-9a-f]{64})$/;

export const fileEntryName = (sha256: string): string => `files/${sha256}`;

/** The entries of an archive by what they are to a copy. */
export interface SortedEntries {
  /** Each place the text may lie. */
  readonly text: readonly ArchiveEntry[];
  /** Each place a file may lie, by its hash. */
  readonly files: ReadonlyMap<string, readonly ArchiveEntry[]>;
  readonly refused: readonly RefusedEntry[];
}

/** Takes the entries whose names are exactly those of a copy; a folder around all of it, as packing it again gives, is left away. */
export function sortEntries(entries: readonly ArchiveEntry[]): SortedEntries {
  const folder = folderAround(entries);
  const text: ArchiveEntry[] = [];
  const files = new Map<string, ArchiveEntry[]>();
  const others: ArchiveEntry[] = [];
  for (const entry of entries) {
    const name = entry.name.startsWith(folder) ? entry.name.slice(folder.length) : entry.name;
    const sha256 = FILE_NAME.exec(name)?.[1];
    if (name === TEXT_NAME) text.push(entry);
    else if (sha256 !== undefined) files.set(sha256, [...(files.get(sha256) ?? []), entry]);
    else if (!isLitter(name)) others.push(entry);
  }
  const ours = [text, ...files.values()];
  const known = new Set(ours.flat().map(({ at }) => at));
  const strangers = others.filter(({ at, hasHeader }) => hasHeader && !known.has(at));
  const refused = [
    ...strangers.map(({ name }) => ({
      name,
      why: climbs(name) ? ('climbs' as const) : ('notOurs' as const),
    })),
    ...ours.flatMap((places) => {
      const real = places.filter(({ hasHeader }) => hasHeader);
      const [first] = real;
      return first !== undefined && real.some(({ at }) => at !== first.at)
        ? [{ name: first.name, why: 'twice' as const }]
        : [];
    }),
  ];
  const byName = new Map(refused.map((entry) => [entry.name, { ...entry, name: shortened(entry.name) }]));
  return { text, files, refused: [...byName.values()] };
}

/** Names that would lead out of a folder, or into the workings of the page, wherever somebody unpacked them. */
export const climbs = (name: string): boolean =>
  /^[/\\]|\\|^[A-Za-z]:|\0/.test(name) ||
  name.split('/').some((part) => part === '..' || part === '.' || part === '__proto__');

// Helpers

function folderAround(entries: readonly ArchiveEntry[]): string {
  const names = new Set(entries.map(({ name }) => name).filter((name) => !climbs(name)));
  const folders = [...names].filter((name) => name.endsWith(`/${TEXT_NAME}`));
  const [only] = folders;
  return names.has(TEXT_NAME) || only === undefined || folders.length > 1
    ? ''
    : only.slice(0, -TEXT_NAME.length);
}

/** What systems put beside when they pack a folder. */
const isLitter = (name: string): boolean =>
  /(^|\/)(__MACOSX\/.*|\.DS_Store|Thumbs\.db|desktop\.ini)$|\/$/.test(name) && !climbs(name);

const shortened = (name: string): string => (name.length <= 80 ? name : `${name.slice(0, 77)}…`);
