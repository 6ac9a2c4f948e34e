import { describe, expect, it } from 'vitest';
import { clubWith, mended, mugsWith, told, verdict } from '@/tests/fixtures/clubJob';

const shirtStep = (step: string, value: unknown) =>
  clubWith({
    [`job.lines.0.placements.0.recipe.steps.${step}`]: value,
    [`job.lines.0.placements.1.recipe.steps.${step}`]: value,
  });
const mugStep = (step: string, value: unknown) =>
  mugsWith({ [`job.lines.0.placements.0.recipe.steps.${step}`]: value });

// 10 to 15 s of cooling in place: common practice.
describe('a step that is left out is told once a line', () => {
  it.each([
    ['REC-07', shirtStep('lintRoll', true), 'pass'],
    ['REC-07', shirtStep('lintRoll', null), 'pass'],
    ['REC-07', shirtStep('lintRoll', false), 'caution'],
    ['REC-07', mugStep('lintRoll', false), 'pass'],
    ['REC-08', shirtStep('tapeEdges', true), 'pass'],
    ['REC-08', shirtStep('tapeEdges', null), 'pass'],
    ['REC-08', shirtStep('tapeEdges', false), 'caution'],
    ['REC-08', mugStep('tapeEdges', false), 'caution'],
    ['REC-09', shirtStep('coolSeconds', 10), 'pass'],
    ['REC-09', shirtStep('coolSeconds', null), 'pass'],
    ['REC-09', shirtStep('coolSeconds', 9.9), 'caution cloth'],
    ['REC-09', shirtStep('coolSeconds', 0), 'caution cloth'],
    ['REC-09', shirtStep('evenCooling', false), 'pass'],
    ['REC-09', mugStep('evenCooling', true), 'pass'],
    ['REC-09', mugStep('evenCooling', null), 'pass'],
    ['REC-09', mugStep('evenCooling', false), 'caution hard'],
    ['REC-09', mugStep('coolSeconds', 0), 'pass'],
  ] as const)('%s %#: %j', (id, input, expected) => {
    expect(verdict(input, id)).toBe(expected);
    expect(told(input, id)).toHaveLength(expected === 'pass' ? 0 : 1);
    // One tap plans it for every placement of the line.
    if (expected !== 'pass') expect(told(mended(input, told(input, id)[0]), id)).toEqual([]);
  });

  it.each([
    [85, 'caution'],
    [84.9, 'pass'],
  ])('REC-07 asks of white and pale cloth: L* %d is %s', (L, expected) => {
    const input = clubWith({
      'blank:white-shirt.colour': { name: 'grey', L, a: 0, b: 0 },
      'job.lines.0.placements.0.recipe.steps.lintRoll': false,
    });
    expect(verdict(input, 'REC-07')).toBe(expected);
  });

  it('is told at the placement that leaves it out', () => {
    const input = clubWith({ 'job.lines.0.placements.1.recipe.steps.tapeEdges': false });
    expect(told(input, 'REC-08')[0]?.where).toMatchObject({
      placementId: 'badge',
      path: ['lines', 0, 'placements', 1, 'recipe', 'steps', 'tapeEdges'],
    });
  });
});

// Below 35 % and above 65 %: common practice.
describe('REC-11 judges the air', () => {
  it.each([
    [0.35, null, 'pass'],
    [0.349, null, 'caution dry'],
    [0.65, null, 'pass'],
    [0.651, null, 'caution damp'],
    [null, null, 'pass'],
    [null, true, 'pass'],
    [null, false, 'caution said'],
    // A meter knows better.
    [0.5, false, 'pass'],
  ])('%s by the meter, right by word %s: %s', (humidity, humidityFits, expected) => {
    const input = clubWith({
      'workshop.habits.humidity': humidity,
      'workshop.habits.humidityFits': humidityFits,
    });
    expect(verdict(input, 'REC-11')).toBe(expected);
  });

  it('goes when the maker says that it is right now', () => {
    const input = clubWith({ 'workshop.habits.humidity': null, 'workshop.habits.humidityFits': false });
    expect(verdict(mended(input, told(input, 'REC-11')[0]), 'REC-11')).toBe('pass');
  });
});
