import { child, children, nameOf, type Source, walk } from './source';

const MOST_LINES = 250;

/** A file is at most as long as a reader can hold; tables of reference values are looked up, not read. */
export function lengthRule(sources: readonly Source[]): readonly string[] {
  return sources
    .filter(({ path }) => !path.startsWith('shared/tables/'))
    .map(({ path, text }) => ({ path, lines: text.trimEnd().split('\n').length }))
    .filter(({ lines }) => lines > MOST_LINES)
    .map(({ path, lines }) => `${path} has ${lines} lines, and ${MOST_LINES} is the most`);
}

/** lib/index.ts is the only file that gathers others: such files are where import circles begin. */
export function barrelRule(sources: readonly Source[]): readonly string[] {
  return sources
    .filter(({ path }) => /(^|\/)index\.\w+$/.test(path) && path !== 'lib/index.ts')
    .map(({ path }) => `${path} is an index file`);
}

/** What lib/ and shared/ export has one name, the same everywhere. */
export function namedExportRule(sources: readonly Source[]): readonly string[] {
  return sources.filter(({ path }) => /^(lib|shared)\//.test(path)).flatMap(defaultExports);
}

function defaultExports({ path, program }: Source): readonly string[] {
  const found: string[] = [];
  walk(program, (node) => {
    const renamed = children(node, 'specifiers').some(
      (specifier) =>
        specifier.type === 'ExportSpecifier' && nameOf(child(specifier, 'exported')) === 'default',
    );
    if (node.type === 'ExportDefaultDeclaration' || renamed) found.push(`${path} has a default export`);
  });
  return found;
}
