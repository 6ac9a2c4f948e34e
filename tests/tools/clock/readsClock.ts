import { child, children, nameOf, type Source, walk } from '@/tests/tools/floors/source';

/** Parts of a moment in the zone of the machine, and texts that are written in it. */
const LOCAL = new Set(
  `getFullYear getMonth getDate getDay getHours getMinutes getSeconds getTimezoneOffset
  setFullYear setMonth setDate setHours setMinutes setSeconds
  toDateString toTimeString toLocaleDateString toLocaleTimeString`
    .trim()
    .split(/\s+/),
);

/** Whether what a file does can depend on the machine's clock or on its zone. */
export function readsClock(source: Source): boolean {
  let reads = false;
  walk(source.program, (node) => {
    if (node.type === 'MemberExpression') {
      const name = nameOf(child(node, 'property')) ?? '';
      const of = nameOf(child(node, 'object'));
      reads ||=
        LOCAL.has(name) || (of === 'Date' && name === 'now') || (of === 'Intl' && name === 'DateTimeFormat');
    }
    if (nameOf(child(node, 'callee')) !== 'Date') return;
    const count = children(node, 'arguments').length;
    // One argument is a moment or a text that names its zone; several are a moment on the wall.
    reads ||= node.type === 'CallExpression' || (node.type === 'NewExpression' && count !== 1);
  });
  return reads;
}
