import { child, children, nameOf, type Source, type SyntaxNode, walk } from './source';

/** Names of the surroundings: network, storage, page, process, timers, threads, ways to run text. */
const SURROUNDINGS = new Set(
  `fetch XMLHttpRequest WebSocket EventSource Request Response Headers
  localStorage sessionStorage indexedDB caches cookieStore
  window document navigator location history screen globalThis self
  Document Window HTMLElement Element Event EventTarget ImageData OffscreenCanvas Image
  process console performance crypto Buffer
  setTimeout setInterval setImmediate requestAnimationFrame requestIdleCallback
  Worker SharedWorker BroadcastChannel MessageChannel postMessage importScripts
  eval Function alert confirm prompt`
    .trim()
    .split(/\s+/),
);

/** Without a locale these read the one of the machine; the number says which argument it is. */
const LOCALE_ARGUMENT: Readonly<Record<string, number>> = {
  toLocaleString: 0,
  toLocaleDateString: 0,
  toLocaleTimeString: 0,
  toLocaleUpperCase: 0,
  toLocaleLowerCase: 0,
  localeCompare: 1,
};

/** lib/ and shared/ give the same answer everywhere and every time: what varies arrives as an argument. */
export function purityRule(sources: readonly Source[]): readonly string[] {
  return sources
    .filter(({ path }) => path.startsWith('lib/') || path.startsWith('shared/'))
    .flatMap((source) => {
      const ownNames = declaredNames(source.program);
      const problems: string[] = source.path.endsWith('x') ? ['is a file of screens'] : [];
      walk(source.program, (node, parent, property) => {
        const problem = problemWith(node, parent, property, ownNames);
        if (problem !== undefined) problems.push(problem);
      });
      return problems.map((problem) => `${source.path} ${problem}`);
    });
}

function problemWith(
  node: SyntaxNode,
  parent: SyntaxNode | undefined,
  property: string,
  ownNames: ReadonlySet<string>,
): string | undefined {
  const name = nameOf(node);
  if (name !== undefined) {
    const isReference = !isMemberName(parent, property) && !ownNames.has(name);
    return isReference && SURROUNDINGS.has(name) ? `uses ${name}` : undefined;
  }
  if (node.type === 'MemberExpression') {
    const whole = `${nameOf(child(node, 'object'))}.${nameOf(child(node, 'property'))}`;
    return whole === 'Date.now' || whole === 'Math.random' ? `uses ${whole}` : undefined;
  }
  if (node.type !== 'NewExpression' && node.type !== 'CallExpression') return undefined;
  const callee = child(node, 'callee');
  const count = children(node, 'arguments').length;
  if (nameOf(callee) === 'Date' && (count === 0 || node.type === 'CallExpression')) return 'reads the clock';
  const member = nameOf(child(callee, 'property'));
  if (nameOf(child(callee, 'object')) === 'Intl' && count === 0)
    return `calls Intl.${member} without a locale`;
  const place = member === undefined ? undefined : LOCALE_ARGUMENT[member];
  return place !== undefined && count <= place ? `calls ${member} without a locale` : undefined;
}

/** `x` in `a.x`, `{ x: 1 }`, `{ readonly x: number }`: a name inside something and not a thing by itself. */
function isMemberName(parent: SyntaxNode | undefined, property: string): boolean {
  if (parent === undefined || parent.computed === true || parent.shorthand === true) return false;
  return property === 'key' || property === 'property' || property === 'label' || property === 'imported';
}

/** Every name the file gives something itself; it then means that, and not what surrounds the file. */
function declaredNames(program: SyntaxNode): ReadonlySet<string> {
  const names = new Set<string>();
  const declare = (pattern: SyntaxNode | undefined): void => {
    if (pattern === undefined) return;
    const name = nameOf(pattern);
    if (name !== undefined) names.add(name);
    for (const part of ['value', 'left', 'argument']) declare(child(pattern, part));
    for (const part of [...children(pattern, 'properties'), ...children(pattern, 'elements')]) declare(part);
  };
  walk(program, (node) => {
    if (/Declarat|^Import.*Specifier$|Function|^ClassExpression$/.test(node.type)) {
      declare(child(node, 'id'));
      declare(child(node, 'local'));
    }
    for (const parameter of children(node, 'params')) declare(parameter);
    declare(node.type === 'CatchClause' ? child(node, 'param') : undefined);
  });
  return names;
}
