import { expect, it } from 'vitest';
import { clubWith, mended, mugsWith, told, verdict } from '@/tests/fixtures/clubJob';

it.each([
  ['ELE-02', 'extensionLead', true, 'caution'],
  ['ELE-02', 'extensionLead', false, 'pass'],
  ['ELE-02', 'extensionLead', null, 'pass'],
  ['SAF-03', 'safetySheets', false, 'note'],
  ['SAF-03', 'safetySheets', true, 'pass'],
  ['SAF-03', 'safetySheets', null, 'pass'],
] as const)('%s: %s %s is %s', (id, habit, value, expected) => {
  const input = clubWith({ [`workshop.habits.${habit}`]: value });
  expect(verdict(input, id)).toBe(expected);
  if (expected !== 'pass') expect(verdict(mended(input, told(input, id)[0]), id)).toBe('pass');
});

// 5 min: common practice.
it.each([
  [5, null, 'pass'],
  [5.1, null, 'caution'],
  [5.1, false, 'caution'],
  [5.1, true, 'pass'],
])('SAF-02: a press alone for %d min, somebody stays %s: %s', (minutes, staysByPress, expected) => {
  const input = mugsWith({
    'workshop.habits.staysByPress': staysByPress,
    'job.lines.0.placements.0.aloneMinutes': {
      value: minutes,
      unit: 'min',
      date: '2026-11-25',
      origin: 'yours',
    },
  });
  expect(verdict(input, 'SAF-02')).toBe(expected);
  if (expected !== 'pass') expect(verdict(mended(input, told(input, 'SAF-02')[0]), 'SAF-02')).toBe('pass');
});
