import { importAt } from './imports';
import { child, children, nameOf, type Source, type SyntaxNode, walk } from './source';

/** Names that the framework asks for; nobody imports them. */
const OF_FRAMEWORK =
  /^(app\/(.*\/)?(page|layout|route|error|global-error|not-found)\.tsx?|proxy\.ts|next\.config\.ts|instrumentation-client\.ts)$/;

/**
 * What a product file exports, somebody else imports: the rest is its own affair.
 *
 * @param sources everything that may import, tests included; only product files are judged
 */
export function exportRule(sources: readonly Source[]): readonly string[] {
  const known = new Set(sources.map(({ path }) => path));
  const wanted = new Set(sources.flatMap((source) => importedNames(source, known)));
  return sources
    .filter(({ path }) => /^(app|lib|shared)\//.test(path) && !OF_FRAMEWORK.test(path))
    .flatMap(({ path, program }) =>
      wanted.has(`${path}#*`)
        ? []
        : exportedNames(program)
            .filter((name) => !wanted.has(`${path}#${name}`))
            .map((name) => `${path} exports ${name}, which nobody imports`),
    );
}

function exportedNames(program: SyntaxNode): readonly string[] {
  return children(program, 'body')
    .filter(({ type }) => type === 'ExportNamedDeclaration')
    .flatMap((node) => {
      const declaration = child(node, 'declaration');
      if (declaration === undefined) return [];
      const one = nameOf(child(declaration, 'id'));
      if (one !== undefined) return [one];
      return children(declaration, 'declarations').flatMap((part) => nameOf(child(part, 'id')) ?? []);
    });
}

function importedNames(source: Source, known: ReadonlySet<string>): readonly string[] {
  const found: string[] = [];
  walk(source.program, (node) => {
    const imported = importAt(node, source.path, known);
    if (imported?.kind !== 'local') return;
    const names = children(node, 'specifiers').map((specifier) =>
      specifier.type === 'ImportSpecifier'
        ? (nameOf(child(specifier, 'imported')) ?? '*')
        : specifier.type === 'ExportSpecifier'
          ? (nameOf(child(specifier, 'local')) ?? '*')
          : '*',
    );
    for (const name of names.length > 0 ? names : ['*']) found.push(`${imported.path}#${name}`);
  });
  return found;
}
