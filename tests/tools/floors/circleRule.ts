import { importsOf } from './imports';
import type { Source } from './source';

/** No file leads back to itself, `import type` included. */
export function circleRule(sources: readonly Source[]): readonly string[] {
  const known = new Set(sources.map((source) => source.path));
  const next = new Map(
    sources.map((source) => [
      source.path,
      importsOf(source, known).flatMap((imported) => (imported.kind === 'local' ? [imported.path] : [])),
    ]),
  );
  const circles: string[] = [];
  const done = new Set<string>();
  const follow = (path: string, trail: readonly string[]): void => {
    const start = trail.indexOf(path);
    if (start !== -1) circles.push([...trail.slice(start), path].join(' → '));
    if (start !== -1 || done.has(path)) return;
    for (const target of next.get(path) ?? []) follow(target, [...trail, path]);
    done.add(path);
  };
  for (const path of known) follow(path, []);
  return circles;
}
