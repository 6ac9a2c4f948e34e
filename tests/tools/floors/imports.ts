import { posix } from 'node:path';
import { child, children, nameOf, type Source, type SyntaxNode, walk } from './source';

/** What one file asks of another, types included. */
export type Import =
  | { readonly kind: 'local'; readonly path: string }
  | { readonly kind: 'package'; readonly name: string };

/**
 * Everything a file imports, in whatever way: statements, `import()`, `import('…').Type`, re-exports,
 * `require`, and the file that `new URL('…', import.meta.url)` names.
 *
 * @param known the paths a local import can lead to
 */
export function importsOf(source: Source, known: ReadonlySet<string>): readonly Import[] {
  const found: Import[] = [];
  walk(source.program, (node) => {
    const imported = importAt(node, source.path, known);
    if (imported !== undefined) found.push(imported);
  });
  return found;
}

/** What one node of a file imports, nothing where it is no import. */
export function importAt(node: SyntaxNode, path: string, known: ReadonlySet<string>): Import | undefined {
  const specifier = specifierOf(node);
  return specifier === undefined ? undefined : resolved(specifier, path, known);
}

function specifierOf(node: SyntaxNode): string | undefined {
  switch (node.type) {
    case 'ImportDeclaration':
    case 'ExportNamedDeclaration':
    case 'ExportAllDeclaration':
    case 'ImportExpression':
    case 'TSImportType':
      return textOf(child(node, 'source'));
    case 'TSExternalModuleReference':
      return textOf(child(node, 'expression'));
    case 'CallExpression':
      return nameOf(child(node, 'callee')) === 'require' ? textOf(children(node, 'arguments')[0]) : undefined;
    case 'NewExpression':
      return nameOf(child(node, 'callee')) === 'URL' && children(node, 'arguments').length === 2
        ? textOf(children(node, 'arguments')[0])
        : undefined;
    default:
      return undefined;
  }
}

function textOf(node: SyntaxNode | undefined): string | undefined {
  return node?.type === 'Literal' && typeof node.value === 'string' ? node.value : undefined;
}

function resolved(specifier: string, from: string, known: ReadonlySet<string>): Import {
  const path = specifier.startsWith('@/')
    ? specifier.slice(2)
    : specifier.startsWith('.')
      ? posix.join(posix.dirname(from), specifier)
      : undefined;
  if (path === undefined) return { kind: 'package', name: packageName(specifier) };
  // A file of a package, named by where it lies.
  if (path.startsWith(PACKAGES)) return { kind: 'package', name: packageName(path.slice(PACKAGES.length)) };
  const endings = ['', '.ts', '.tsx', '.mjs', '/index.ts', '/index.tsx'];
  return { kind: 'local', path: endings.map((ending) => path + ending).find((at) => known.has(at)) ?? path };
}

const PACKAGES = 'node_modules/';

function packageName(specifier: string): string {
  if (specifier.startsWith('node:')) return specifier;
  return specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/');
}
