import { expect, it } from 'vitest';
import { hourNoteWords } from '@/app/_words/year/yearNames';

it.each([
  ['noted', 'Packed', 'Packed'],
  ['close', '', ''],
  ['closePlan', '', 'as planned, not noted'],
  ['standard', '', 'as planned, not noted'],
] as const)('hours that are known by %s, with the note %j, say %j', (from, note, words) => {
  expect(hourNoteWords({ from, note })).toBe(words);
});
