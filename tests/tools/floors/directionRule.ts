import { type Import, importsOf } from './imports';
import type { Source } from './source';

const FLOORS = ['shared', 'lib', 'app'] as const;

/** What the two lower floors may take from outside: a new entry is a decision. */
const PACKAGES: Readonly<Record<string, readonly string[]>> = {
  shared: ['zod'],
  // The PDF library and its tool for type are loaded on demand and do no more than write bytes.
  lib: ['zod', '@cantoo/fontkit', '@cantoo/pdf-lib', '@noble/hashes', 'bidi-js', 'fflate'],
};

/** The one file that talks to the formula engine. */
const ENGINE = { file: 'lib/grid/engine.ts', name: 'hyperformula' };

/** Each floor imports from itself and those below, and only one file the formula engine. */
export function directionRule(sources: readonly Source[]): readonly string[] {
  const known = new Set(sources.map((source) => source.path));
  return sources.flatMap((source) =>
    importsOf(source, known)
      .map((imported) => problemWith(source.path, imported))
      .filter((problem) => problem !== undefined)
      .map((problem) => `${source.path} ${problem}`),
  );
}

function problemWith(path: string, imported: Import): string | undefined {
  if (imported.kind === 'local') {
    const target = floorOf(imported.path);
    if (target === -1) return `imports ${imported.path}, which is on no floor`;
    return target > floorOf(path) ? `imports ${imported.path}, which is above it` : undefined;
  }
  if (imported.name === ENGINE.name) {
    return path === ENGINE.file ? undefined : `imports ${ENGINE.name}, which only ${ENGINE.file} may`;
  }
  const floor = path.split('/')[0] ?? '';
  const allowed = PACKAGES[floor];
  return allowed === undefined || allowed.includes(imported.name)
    ? undefined
    : `imports ${imported.name}, which is not for ${floor}/`;
}

function floorOf(path: string): number {
  // The files of the framework at the top level belong to the app.
  return path.includes('/')
    ? FLOORS.findIndex((floor) => path.startsWith(`${floor}/`))
    : FLOORS.indexOf('app');
}
