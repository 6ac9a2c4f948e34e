import { parseAst } from 'vitest/node';

/** One file of the project, read. */
export interface Source {
  /** From the top level, with `/`. */
  readonly path: string;
  readonly text: string;
  readonly program: SyntaxNode;
}

/** A node of the parsed file; which further properties it has depends on its type. */
export interface SyntaxNode {
  readonly type: string;
  readonly [property: string]: unknown;
}

/** Parses a file. TypeScript's own parser cannot be called from a program; the test runner brings one along. */
export function readSource(path: string, text: string): Source {
  const program: unknown = parseAst(text, { lang: path.endsWith('x') ? 'tsx' : 'ts' });
  if (!isNode(program)) throw new Error(`${path} could not be parsed`);
  return { path, text, program };
}

/** Calls back for each node with the one that holds it and the name of the property that does. */
export function walk(
  node: SyntaxNode,
  visit: (node: SyntaxNode, parent: SyntaxNode | undefined, property: string) => void,
  parent?: SyntaxNode,
  property = '',
): void {
  visit(node, parent, property);
  for (const [name, value] of Object.entries(node)) {
    for (const child of Array.isArray(value) ? value : [value]) {
      if (isNode(child)) walk(child, visit, node, name);
    }
  }
}

/** The node in a property, where there is one. */
export function child(node: SyntaxNode | undefined, property: string): SyntaxNode | undefined {
  const value = node?.[property];
  return isNode(value) ? value : undefined;
}

/** The nodes in a property that holds a list. */
export function children(node: SyntaxNode, property: string): readonly SyntaxNode[] {
  const value = node[property];
  return Array.isArray(value) ? value.filter(isNode) : [];
}

/** The name of an identifier, `undefined` for any other node. */
export function nameOf(node: SyntaxNode | undefined): string | undefined {
  return node?.type === 'Identifier' && typeof node.name === 'string' ? node.name : undefined;
}

function isNode(value: unknown): value is SyntaxNode {
  return typeof value === 'object' && value !== null && 'type' in value && typeof value.type === 'string';
}
