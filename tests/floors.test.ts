import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { circleRule } from '@/tests/tools/floors/circleRule';
import { directionRule } from '@/tests/tools/floors/directionRule';
import { exportRule } from '@/tests/tools/floors/exportRule';
import { projectSources } from '@/tests/tools/floors/projectSources';
import { purityRule } from '@/tests/tools/floors/purityRule';
import { roomCircles, roomRule, roomsOf } from '@/tests/tools/floors/roomRule';
import { barrelRule, lengthRule, namedExportRule } from '@/tests/tools/floors/shapeRules';
import { readSource, type Source } from '@/tests/tools/floors/source';
import { styleRule } from '@/tests/tools/floors/styleRule';
import { testFiles } from '@/tests/tools/floors/testFiles';

const project = projectSources(fileURLToPath(new URL('..', import.meta.url)));

/** The tables of rooms stand where people read them. */
const guides = ['../lib/README.md', '../app/README.md', '../app/_docket/README.md'].map((path) =>
  readFileSync(new URL(path, import.meta.url), 'utf8'),
);

type Files = Readonly<Record<string, string>>;

function planted(files: Files): readonly Source[] {
  return Object.entries(files).map(([path, text]) => readSource(path, text));
}

test('the project is read whole: all three floors hold files', () => {
  for (const floor of ['shared/', 'lib/', 'app/', 'proxy.ts']) {
    expect(project.filter(({ path }) => path.startsWith(floor)).length, floor).toBeGreaterThan(0);
  }
});

describe('each floor imports from itself and from those below', () => {
  test('in the project', () => expect(directionRule(project)).toEqual([]));

  test.each<[string, string, string]>([
    ['a lib file may not import the app', 'lib/a.ts', `import { b } from '@/app/b';`],
    ['not by a path of dots', 'lib/grid/a.ts', `import { b } from '../../app/b';`],
    ['not its types', 'shared/a.ts', `import type { B } from '../lib/b';`],
    ['not its types inline', 'shared/a.ts', `export type A = import('../lib/b').B;`],
    ['not by re-export', 'shared/a.ts', `export * from '@/lib/b';`],
    ['not later', 'lib/a.ts', `export const a = () => import('@/app/b');`],
    ['not as a worker', 'lib/a.ts', `export const a = new URL('../app/b.worker.ts', import.meta.url);`],
    ['the app may not import the tests', 'app/a.ts', `import { b } from '@/tests/b';`],
    ['shared may import no package but zod', 'shared/a.ts', `import { b } from 'fflate';`],
    ['lib may not import React', 'lib/a.ts', `import { useState } from 'react';`],
    ['lib may not import Node', 'lib/a.ts', `import { readFileSync } from 'node:fs';`],
    ['the engine has one importer', 'lib/grid/a.ts', `import { HyperFormula } from 'hyperformula';`],
    ['its types too', 'app/a.ts', `import type { CellValue } from 'hyperformula';`],
  ])('%s', (_, path, text) => expect(directionRule(planted({ [path]: text }))).toHaveLength(1));

  test.each<[string, string, string]>([
    ['the app imports lib and React', 'app/a.tsx', `import '@/lib/b'; import { useState } from 'react';`],
    ['lib imports shared and zod', 'lib/a.ts', `import '@/shared/b'; import { z } from 'zod';`],
    ['the top level imports the app', 'proxy.ts', `import { b } from '@/app/b';`],
    ['engine.ts imports the engine', 'lib/grid/engine.ts', `import { HyperFormula } from 'hyperformula';`],
    ['words in a text are no import', 'lib/a.ts', `export const a = "import { b } from '@/app/b'";`],
  ])('%s: allowed', (_, path, text) => expect(directionRule(planted({ [path]: text }))).toEqual([]));
});

describe('each room imports only the rooms that its row in the guide names', () => {
  const rooms = guides.flatMap(roomsOf);
  const guide = '| `lib/a` | sums | – |\n| `lib/b` | checks | a |\n| `app/_c` | words | – |';

  test('in the project', () => expect(roomRule(project, rooms)).toEqual([]));
  test('the rooms of the project lead in no circle', () => expect(roomCircles(rooms)).toEqual([]));

  const lawful: Files = { 'lib/a/x.ts': '', 'lib/b/y.ts': `import '@/lib/a/x';`, 'app/_c/z.ts': '' };
  const breaches: readonly [string, Files][] = [
    ['an import the table does not name', { 'lib/a/x.ts': `import '../b/y';` }],
    ['its types too', { 'lib/a/x.ts': `import type { Y } from '@/lib/b/y';` }],
    ['a file in no room', { 'lib/w.ts': '' }],
    ['a room of no row', { 'app/_d/w.ts': '' }],
    ['a row for imports that nobody makes', { 'lib/b/y.ts': '' }],
  ];

  test('what the table names is allowed', () => {
    expect(roomRule(planted(lawful), roomsOf(guide))).toEqual([]);
  });
  test.each(breaches)('%s is found', (_, files) => {
    expect(roomRule(planted({ ...lawful, ...files }), roomsOf(guide))).not.toEqual([]);
  });
  test('a row for an empty room is found', () => {
    expect(roomRule(planted(lawful), roomsOf(`${guide}\n| \`lib/e\` | nothing | – |`))).toHaveLength(1);
  });
  test('a circle of rooms is found', () => {
    expect(roomCircles(roomsOf('| `lib/a` | | b |\n| `lib/b` | | a |'))).toHaveLength(1);
  });
  test('a room within a room has a row of its own', () => {
    const within = '| `app/_c` | | – |\n| `app/_c/d` | | e _c |\n| `app/_c/e` | | – |';
    expect(roomsOf(within)[1]?.mayImport).toEqual(['app/_c/e', 'app/_c']);
  });
});

describe('nothing imports in a circle', () => {
  test('in the project', () => expect(circleRule(project)).toEqual([]));

  test.each<[string, Files]>([
    ['two files', { 'lib/a.ts': `import './b';`, 'lib/b.ts': `import './a';` }],
    [
      'types alone',
      { 'lib/a.ts': `import type { B } from './b';`, 'lib/b.ts': `import type { A } from './a';` },
    ],
    [
      'three',
      { 'lib/a.ts': `import './b';`, 'lib/b.ts': `export * from './c';`, 'lib/c.ts': `import '@/lib/a';` },
    ],
    ['itself', { 'lib/a.ts': `import './a';` }],
  ])('a circle of %s is found once', (_, files) => expect(circleRule(planted(files))).toHaveLength(1));

  test('two ways to one file are no circle', () => {
    const files = { 'lib/a.ts': `import './b'; import './c';`, 'lib/b.ts': `import './c';`, 'lib/c.ts': '' };
    expect(circleRule(planted(files))).toEqual([]);
  });
});

describe('lib/ and shared/ take nothing from their surroundings', () => {
  test('in the project', () => expect(purityRule(project)).toEqual([]));

  test.each([
    'Date.now()',
    'new Date()',
    'Date()',
    'performance.now()',
    'Math.random()',
    'crypto.randomUUID()',
    `fetch('/a')`,
    'localStorage.length',
    'document.title',
    'globalThis.document',
    'process.env.A',
    'console.log(1)',
    'setTimeout(() => {}, 1)',
    `eval('1')`,
    '{ document }',
    '[...document.links]',
    '(1).toLocaleString()',
    `'a'.localeCompare('b')`,
    'new Intl.NumberFormat()',
  ])('%s is found', (expression) => {
    expect(purityRule(planted({ 'lib/a.ts': `export const a = (${expression});` }))).not.toEqual([]);
    expect(purityRule(planted({ 'shared/a.ts': `export const a = (${expression});` }))).not.toEqual([]);
    expect(purityRule(planted({ 'app/a.ts': `export const a = (${expression});` }))).toEqual([]);
  });

  test('the type of a page element is found', () => {
    expect(purityRule(planted({ 'lib/a.ts': 'export type A = HTMLElement;' }))).toHaveLength(1);
  });

  test('a file of screens is found', () => {
    expect(purityRule(planted({ 'lib/a.tsx': 'export const a = <p>1</p>;' }))).toHaveLength(1);
  });

  test.each([
    'new Date(0)',
    `Date.UTC(2026, 1, 1)`,
    'Math.max(1, 2)',
    '{ document: 1 }',
    'job.document.location',
    '(document: string) => document.length',
    '({ window }: { window: number }) => window',
    `(1).toLocaleString('en-GB')`,
    `'a'.localeCompare('b', 'en')`,
    `new Intl.NumberFormat('en-GB')`,
  ])('%s is allowed', (expression) => {
    expect(purityRule(planted({ 'lib/a.ts': `export const a = (${expression});` }))).toEqual([]);
  });
});

describe('a file holds at most 250 lines', () => {
  const long = 'export {};\n'.repeat(251);

  test('in the project', () => expect(lengthRule(project)).toEqual([]));
  test('one more is found', () => expect(lengthRule(planted({ 'app/a.ts': long }))).toHaveLength(1));
  test('a reference table may be longer', () => {
    expect(lengthRule(planted({ 'shared/tables/a.ts': long }))).toEqual([]);
  });
});

describe('no index file gathers others', () => {
  test('in the project', () => expect(barrelRule(project)).toEqual([]));
  test.each(['lib/grid/index.ts', 'app/_fields/index.tsx', 'shared/index.ts'])('%s is found', (path) => {
    expect(barrelRule(planted({ [path]: '' }))).toHaveLength(1);
  });
  test('lib/index.ts is allowed', () => expect(barrelRule(planted({ 'lib/index.ts': '' }))).toEqual([]));
});

describe('lib/ and shared/ export by name', () => {
  test('in the project', () => expect(namedExportRule(project)).toEqual([]));
  test.each(['export default 1;', 'const a = 1; export { a as default };', `export { default } from './b';`])(
    '%s is found',
    (text) => expect(namedExportRule(planted({ 'shared/a.ts': text }))).toHaveLength(1),
  );
  test('the app may, where the framework asks for it', () => {
    expect(namedExportRule(planted({ 'app/page.tsx': 'export default 1;' }))).toEqual([]);
  });
});

describe('what a file exports, another one imports', () => {
  const root = fileURLToPath(new URL('..', import.meta.url));
  const tests = testFiles(root, () => true);

  test('in the project', () => expect(exportRule([...project, ...tests])).toEqual([]));

  test.each<[string, Files]>([
    ['a function', { 'lib/a.ts': 'export function a() {}' }],
    ['a type', { 'lib/a.ts': 'export type A = 1;' }],
    ['one of two', { 'lib/a.ts': 'export const a = 1, b = 2;', 'lib/b.ts': `import { a } from './a';` }],
    [
      'another of the same name',
      { 'lib/a.ts': 'export const a = 1;', 'lib/b.ts': `import { a } from './c';` },
    ],
  ])('%s that nobody imports is found', (_, files) => expect(exportRule(planted(files))).toHaveLength(1));

  test.each<[string, string]>([
    ['under another name', `import { a as b } from '@/lib/a';`],
    ['as a type', `import type { a } from '@/lib/a';`],
    ['whole', `import * as all from '@/lib/a';`],
    ['later', `const a = () => import('@/lib/a');`],
    ['to hand it on', `export { a } from '@/lib/a'; import { a as c } from '@/tests/b';`],
  ])('imported %s it is used', (_, text) => {
    expect(exportRule(planted({ 'lib/a.ts': 'export const a = 1;', 'tests/b.ts': text }))).toEqual([]);
  });
});

describe('one way to write each thing', () => {
  test('in the project', () => expect(styleRule(project)).toEqual([]));

  test.each([
    'export const a = () => { return 1; };',
    'const a = async <T>(b: T) => { return b; };',
    'export type A = { readonly b: number };',
    'type A = Readonly<{ b: number }>;',
  ])('%s is found', (text) => expect(styleRule(planted({ 'lib/a.ts': text }))).toHaveLength(1));

  test.each([
    'export const a = () => 1;',
    'const a: Rule = () => { return []; };',
    'export function a() { return 1; }',
    'export interface A { readonly b: number }',
    'type AProps = Readonly<{ b: number }>;',
    `export type A = { readonly kind: 'a' } | { readonly kind: 'b' };`,
  ])('%s is allowed', (text) => expect(styleRule(planted({ 'app/a.tsx': text }))).toEqual([]));
});
