import { describe, expect, it } from 'vitest';
import { clubWith, told, verdict } from '@/tests/fixtures/clubJob';

const names = (count: number) => Array.from({ length: count }, (_, index) => `No. ${index + 1}`).join('\n');
const withNames = (nameList: string) => clubWith({ 'job.lines.0.nameList': nameList });

/* A name on each piece is counted against the pieces: common practice. */
describe('ART-12 counts names against pieces', () => {
  it.each([
    ['no list', '', 'pass'],
    ['one for each of 37', names(37), 'pass'],
    ['one for each, with empty lines and spaces', `\n ${names(37)} \n\n`, 'pass'],
    ['one too few', names(36), 'stop count'],
    ['one too many', names(38), 'stop count'],
  ])('%s', (_, list, expected) => {
    expect(verdict(withNames(list), 'ART-12')).toBe(expected);
  });

  it('asks about a name that stands twice, in capitals or not', () => {
    const list = `${names(35)}\nAna\nANA`;
    expect(verdict(withNames(list), 'ART-12')).toBe('caution twice');
    expect(told(withNames(list), 'ART-12')[0]?.facts).toMatchObject({ name: 'Ana' });
  });
});

/* Colours are matched by eye to a pressed swatch: common practice. */
describe('ART-09 cautions of a colour that has to match', () => {
  it.each([
    ['free', 'pass'],
    ['wanted', 'caution'],
    ['approved', 'pass'],
  ])('%s: %s', (colourMatch, expected) => {
    expect(verdict(clubWith({ 'artwork:hill-path.colourMatch': colourMatch }), 'ART-09')).toBe(expected);
  });
});
