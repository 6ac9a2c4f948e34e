import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { limitRule } from '@/tests/tools/floors/limitRule';
import { projectSources } from '@/tests/tools/floors/projectSources';
import { readSource } from '@/tests/tools/floors/source';

const planted = (path: string, text: string) => limitRule([readSource(path, text)]);

describe('no screen types a limit that the schema has', () => {
  test('in the project', () => {
    expect(limitRule(projectSources(fileURLToPath(new URL('..', import.meta.url))))).toEqual([]);
  });

  test.each([
    ['a number', '<NumberField max={500} />'],
    ['a number below nothing', '<NumberField min={-500} />'],
    ['a number as a text', '<input maxLength="120" />'],
    ['a constant of the file', 'const MOST = 1e9; export const a = <NumberField max={MOST} />'],
    ['the other end of a constant', 'const MOST = 1e9; export const a = <NumberField min={-MOST} />'],
    [
      'an object that is spread',
      `import { NumberField } from '../b'; const money = { above: 0 }; export const a = <NumberField {...money} />`,
    ],
    ['what is handed on', `import { rateSpec } from '../b'; export const a = rateSpec('life', { min: 1 })`],
    ['the length of a text', '<TextField longest={120} />'],
    ['whole numbers', '<NumberField decimals={0} />'],
    ['how many parts there may be', '<PartList most={20} />'],
  ])('%s is found', (_, text) => {
    expect(planted('app/a.tsx', text)).toHaveLength(1);
    expect(planted('tests/a.tsx', text)).toEqual([]);
  });

  test.each([
    ['what the schema says', `<NumberField {...numberLimits(recipeSchema, ['dwellSeconds'])} />`],
    ['what is worked out', '<NumberField max={(breaks[1] ?? most) - 1} decimals={digits} />'],
    ['a bar of progress', '<progress max={1} />'],
    ['another figure', '<TextField rows={3} />'],
    [
      'the ends of a drawing',
      'const bounds = { min: 1, max: 2 }; export const a = <Ruler bounds={bounds} />',
    ],
  ])('%s is allowed', (_, text) => expect(planted('app/a.tsx', text)).toEqual([]));
});
