import { importsOf } from '@/tests/tools/floors/imports';
import type { Source } from '@/tests/tools/floors/source';
import { readsClock } from './readsClock';

const TEST = /\.test\.tsx?$/;

/**
 * The test files that touch days: those that read the clock or the zone themselves or through anything they
 * import, and those that name the module of days. All others get their day as an argument, which
 * `floors.test.ts` sees to, and cannot tell one clock from another.
 *
 * @param sources tests, and all that they can import
 */
export function dayTests(sources: readonly Source[]): readonly string[] {
  const known = new Set(sources.map(({ path }) => path));
  const imports = new Map(sources.map((source) => [source.path, localImports(source, known)]));
  const readers = new Set(sources.filter(readsClock).map(({ path }) => path));
  return [...known].filter(
    (path) =>
      TEST.test(path) &&
      (imports.get(path)?.includes('shared/days.ts') ||
        [...closureOf(path, imports)].some((at) => readers.has(at))),
  );
}

function localImports(source: Source, known: ReadonlySet<string>): readonly string[] {
  return importsOf(source, known).flatMap((one) => (one.kind === 'local' ? [one.path] : []));
}

function closureOf(start: string, imports: ReadonlyMap<string, readonly string[]>): ReadonlySet<string> {
  const reached = new Set([start]);
  // A set that grows while it is walked is walked to its end.
  for (const path of reached) for (const next of imports.get(path) ?? []) reached.add(next);
  return reached;
}
