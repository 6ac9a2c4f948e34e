import { readdirSync, readFileSync } from 'node:fs';

const EVERY_MS = 25;
const KB = 1_024;

/**
 * Watches what a process and those it started hold in memory (Linux).
 *
 * @returns `end` gives what it grew by at its peak, in bytes
 */
export function peakOf(pid: number): { readonly end: () => number } {
  const before = memoryOf(pid);
  let most = before;
  const timer = setInterval(() => {
    most = Math.max(most, memoryOf(pid));
  }, EVERY_MS);
  return {
    end() {
      clearInterval(timer);
      return Math.max(most, memoryOf(pid)) - before;
    },
  };
}

function memoryOf(pid: number): number {
  const parents = new Map(
    readdirSync('/proc')
      .filter((name) => /^\d+$/.test(name))
      .map((name) => [Number(name), numberIn(name, 'PPid')] as const),
  );
  const isOurs = (one: number): boolean => {
    const parent = parents.get(one) ?? 0;
    return one === pid || (parent > 1 && isOurs(parent));
  };
  // What is shared between processes counts once: only what is a process's own, and files in shared memory.
  return [...parents.keys()]
    .filter(isOurs)
    .reduce((sum, one) => sum + numberIn(String(one), 'RssAnon') * KB, 0);
}

/** A process may end while it is looked at. */
function numberIn(pid: string, field: string): number {
  try {
    const text = readFileSync(`/proc/${pid}/status`, 'utf8');
    return Number(text.match(new RegExp(`^${field}:\\s+(\\d+)`, 'm'))?.[1] ?? 0);
  } catch {
    return 0;
  }
}
