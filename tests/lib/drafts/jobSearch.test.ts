import { expect, test } from 'vitest';
import { isFound, searchText } from '@/lib/drafts/jobSearch';
import { clubWith } from '@/tests/fixtures/clubJob';

const found = (name: string, asked: string): boolean => {
  const { job, blanks, artworks } = clubWith({ 'job.name': name });
  return isFound(searchText(job, { blanks, artworks }), asked);
};

test.each([
  ['Šárka Nováková', 'sarka novak'],
  ['Straße am Øresund', 'STRASSE oresund'],
  ['İstanbul Maratonu', 'istanbul'],
  ['Café crème', 'creme cafe'],
  ['ŁÓDŹ', 'łódź'],
])('“%s” is found by “%s”', (name, asked) => expect(found(name, asked)).toBe(true));

test('every word asked for has to be there', () => {
  expect(found('Café crème', 'cafe latte')).toBe(false);
});
