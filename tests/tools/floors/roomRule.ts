import { importsOf } from './imports';
import type { Source } from './source';

/** A room of the code and the other rooms of its floor that it may import. */
export interface Room {
  /** The folder, such as `lib/grid`. */
  readonly path: string;
  readonly mayImport: readonly string[];
}

/** Framework files of the top level and of the routes; they stand above every room. */
const ROUTES = 'app';

/**
 * Reads the tables of rooms in a guide: rows of `| folder | what it holds | rooms it may import |`. A name without a
 * folder means a neighbour: `job` beside `lib/grid` is `lib/job`, `_words` anywhere is `app/_words`.
 */
export function roomsOf(guide: string): readonly Room[] {
  return guide.split('\n').flatMap((line): readonly Room[] => {
    const [, folder, , names] = line.split('|').map((cell) => cell.trim());
    const path = folder?.match(/^`((?:lib|app)\/\w+(?:\/\w+)?)`$/)?.[1];
    if (path === undefined || names === undefined) return [];
    const beside = path.slice(0, path.lastIndexOf('/') + 1);
    const mayImport = names.split(/[\s,]+/).filter((name) => name !== '' && name !== '–');
    return [
      { path, mayImport: mayImport.map((name) => (name.startsWith('_') ? `app/${name}` : beside + name)) },
    ];
  });
}

/** Files in no room, imports the table does not allow, and rows of the table that nothing lives up to. */
export function roomRule(sources: readonly Source[], rooms: readonly Room[]): readonly string[] {
  const known = new Set(sources.map(({ path }) => path));
  const allowed = new Map(rooms.map(({ path, mayImport }) => [path, new Set(mayImport)]));
  const inhabited = new Set<string>();
  const used = new Set<string>();
  const problems = new Set<string>();
  for (const source of sources) {
    if (source.path.startsWith('shared/')) continue;
    const from = roomOf(source.path, allowed);
    if (from === undefined) {
      problems.add(`${source.path} stands in no room of the table`);
      continue;
    }
    inhabited.add(from);
    for (const imported of importsOf(source, known)) {
      if (imported.kind !== 'local' || !known.has(imported.path)) continue;
      if (floorOf(imported.path) !== floorOf(source.path)) continue;
      const to = roomOf(imported.path, allowed);
      if (to === undefined || to === from || from === ROUTES) continue;
      used.add(`${from} → ${to}`);
      if (!allowed.get(from)?.has(to)) {
        problems.add(`${source.path} imports ${imported.path}, but ${from} may not import ${to}`);
      }
    }
  }
  for (const { path, mayImport } of rooms) {
    if (!inhabited.has(path)) problems.add(`${path} stands in the table, but holds nothing`);
    for (const to of mayImport) {
      if (!used.has(`${path} → ${to}`)) problems.add(`${path} may import ${to}, but does not`);
    }
  }
  return [...problems];
}

/** Rooms that lead back to themselves by what they may import. */
export function roomCircles(rooms: readonly Room[]): readonly string[] {
  const next = new Map(rooms.map(({ path, mayImport }) => [path, mayImport]));
  const circles: string[] = [];
  const done = new Set<string>();
  const follow = (room: string, trail: readonly string[]): void => {
    const start = trail.indexOf(room);
    if (start !== -1) circles.push([...trail.slice(start), room].join(' → '));
    if (start !== -1 || done.has(room)) return;
    for (const to of next.get(room) ?? []) follow(to, [...trail, room]);
    done.add(room);
  };
  for (const room of next.keys()) follow(room, []);
  return circles;
}

function roomOf(path: string, rooms: ReadonlyMap<string, unknown>): string | undefined {
  const parts = path.split('/').slice(0, -1);
  for (let depth = parts.length; depth > 1; depth -= 1) {
    const folder = parts.slice(0, depth).join('/');
    if (rooms.has(folder)) return folder;
  }
  const isRoute = floorOf(path) === 'app' && !parts.some((part) => part.startsWith('_'));
  return isRoute ? ROUTES : undefined;
}

function floorOf(path: string): string {
  return path.includes('/') ? (path.split('/')[0] ?? '') : 'app';
}
