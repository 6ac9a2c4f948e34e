import { describe, expect, test } from 'vitest';
import { readSource } from '@/tests/tools/floors/source';
import { dayTests } from './dayTests';

const planted = (files: Readonly<Record<string, string>>) =>
  dayTests(Object.entries(files).map(([path, text]) => readSource(path, text)));

describe('a test touches days', () => {
  test.each<[string, string]>([
    ['that asks for the weekday', 'new Date().getDay();'],
    ['that asks for now', 'const start = Date.now();'],
    ['that asks in words', 'Date();'],
    ['that names a moment on the wall', 'new Date(2026, 10, 25);'],
    ['that reads a moment in the zone of the machine', 'moment.getHours();'],
    ['that writes a moment in the zone of the machine', `Intl.DateTimeFormat('en-US').format(moment);`],
    ['that names the module of days', `import { addDays } from '@/shared/days';`],
  ])('%s', (_, text) => {
    expect(planted({ 'tests/a.test.ts': text, 'shared/days.ts': '' })).toEqual(['tests/a.test.ts']);
  });

  test('through what it imports, however far', () => {
    const files = {
      'tests/a.test.tsx': `vi.mock('@/app/b', async () => ({ b: await import('./bench') }));`,
      'tests/bench.ts': `import { b } from '@/app/b';`,
      'app/b.ts': `export * from './c';`,
      'app/c.ts': 'export const today = () => new Date();',
    };
    expect(planted(files)).toEqual(['tests/a.test.tsx']);
  });

  test('not where every day is written out', () => {
    const files = {
      'tests/a.test.ts': `import { b } from '@/lib/b'; new Date('2026-11-25T00:00:00Z').toISOString();`,
      'lib/b.ts': 'export const b = 1;',
      'app/c.ts': 'export const today = () => new Date();',
    };
    expect(planted(files)).toEqual([]);
  });
});
