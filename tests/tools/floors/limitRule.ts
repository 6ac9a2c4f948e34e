import { child, children, nameOf, type Source, type SyntaxNode, walk } from './source';

const LIMITS: readonly string[] = [
  'min',
  'max',
  'above',
  'most',
  'longest',
  'shortest',
  'decimals',
  'maxLength',
];
/** A bar of progress is no field. */
const BARS: readonly string[] = ['progress', 'meter'];
/** What a file imports that shows fields, or tells others how to. */
const OF_FIELDS = /Field$|Limits$|^(mostEntries|RateSpec|rateSpec)$/;

/** No screen types the limit of a field as a number: the schema of its document has it (`shared/limits.ts`). */
export function limitRule(sources: readonly Source[]): readonly string[] {
  return sources.filter(({ path }) => path.startsWith('app/')).flatMap(typedLimits);
}

function typedLimits({ path, program }: Source): readonly string[] {
  const figures = namedFigures(program);
  const isOfFields = importedNames(program).some((name) => OF_FIELDS.test(name));
  const found: string[] = [];
  walk(program, (node, parent) => {
    const limit = limitOfAttribute(node, parent) ?? (isOfFields ? limitOfObject(node, parent) : undefined);
    if (limit === undefined || !isFigure(limit.value, figures)) return;
    found.push(`${path} types the limit “${limit.name}” of a field: take it from the schema`);
  });
  return found;
}

function limitOfAttribute(node: SyntaxNode, parent: SyntaxNode | undefined) {
  if (node.type !== 'JSXAttribute' || BARS.includes(textOf(child(parent, 'name')))) return undefined;
  const value = child(node, 'value');
  return limit(textOf(child(node, 'name')), value?.type === 'Literal' ? value : child(value, 'expression'));
}

/** Objects are spread into fields, here or where they are handed on to. */
function limitOfObject(node: SyntaxNode, parent: SyntaxNode | undefined) {
  if (node.type !== 'Property' || parent?.type !== 'ObjectExpression') return undefined;
  return limit(nameOf(child(node, 'key')) ?? '', child(node, 'value'));
}

const limit = (name: string, value: SyntaxNode | undefined) =>
  value !== undefined && LIMITS.includes(name) ? { name, value } : undefined;

const textOf = (node: SyntaxNode | undefined) => (typeof node?.name === 'string' ? node.name : '');

const importedNames = (program: SyntaxNode): readonly string[] =>
  children(program, 'body')
    .filter(({ type }) => type === 'ImportDeclaration')
    .flatMap((declaration) => children(declaration, 'specifiers'))
    .flatMap((specifier) => nameOf(child(specifier, 'local')) ?? []);

/** The constants of a file that stand for a number. */
function namedFigures(program: SyntaxNode): ReadonlySet<string> {
  const names = new Set<string>();
  for (const statement of children(program, 'body')) {
    const declared =
      statement.type === 'ExportNamedDeclaration' ? child(statement, 'declaration') : statement;
    if (declared === undefined) continue;
    for (const one of children(declared, 'declarations')) {
      const name = nameOf(child(one, 'id'));
      const value = child(one, 'init');
      if (name !== undefined && value !== undefined && isFigure(value, names)) names.add(name);
    }
  }
  return names;
}

function isFigure(node: SyntaxNode, figures: ReadonlySet<string>): boolean {
  if (node.type === 'UnaryExpression') return isFigure(child(node, 'argument') ?? node, figures);
  if (node.type === 'Literal') return typeof node.value === 'number' || /^\d+$/.test(String(node.value));
  return figures.has(nameOf(node) ?? '');
}
