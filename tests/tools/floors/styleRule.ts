import { child, children, nameOf, type Source, type SyntaxNode } from './source';

/**
 * One way to write each thing: a function with statements is a `function`, an arrow holds one expression or has the
 * type of its constant; data is an `interface`, and only a component's props are a type of their own.
 */
export function styleRule(sources: readonly Source[]): readonly string[] {
  return sources.flatMap(({ path, program }) =>
    children(program, 'body')
      .map((node) => child(node, 'declaration') ?? node)
      .flatMap((node) => (node.type === 'VariableDeclaration' ? children(node, 'declarations') : [node]))
      .flatMap((node) => problemWith(node) ?? [])
      .map((problem) => `${path}: ${problem}`),
  );
}

function problemWith(node: SyntaxNode): string | undefined {
  const name = nameOf(child(node, 'id')) ?? '';
  if (node.type === 'VariableDeclarator') {
    const value = child(node, 'init');
    const isLong =
      value?.type === 'ArrowFunctionExpression' && child(value, 'body')?.type === 'BlockStatement';
    const isTyped = child(child(node, 'id'), 'typeAnnotation') !== undefined;
    return isLong && !isTyped ? `${name} is an arrow with statements: write a function` : undefined;
  }
  if (node.type !== 'TSTypeAliasDeclaration' || name.endsWith('Props')) return undefined;
  return isShape(child(node, 'typeAnnotation')) ? `${name} is data: write an interface` : undefined;
}

function isShape(type: SyntaxNode | undefined): boolean {
  if (type?.type === 'TSTypeLiteral') return true;
  const isReadonly = type?.type === 'TSTypeReference' && nameOf(child(type, 'typeName')) === 'Readonly';
  const [of] = children(child(type, 'typeArguments') ?? { type: '' }, 'params');
  return isReadonly && of?.type === 'TSTypeLiteral';
}
