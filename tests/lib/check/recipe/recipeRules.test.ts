import { describe, expect, it } from 'vitest';
import { checkJob } from '@/lib/check/checkJob';
import { celsiusFromFahrenheit, kpaFromPsi } from '@/shared/units';
import { changed, clubWith, mended, mugsWith, told, verdict } from '@/tests/fixtures/clubJob';

/** The worked example with one placement and this in its recipe. */
const recipe = (fields: Record<string, unknown>) => {
  const { job } = clubWith({});
  return clubWith({
    'job.lines.0.placements': job.lines[0]?.placements.slice(0, 1),
    ...Object.fromEntries(
      Object.entries(fields).map(([key, value]) => [`job.lines.0.placements.0.recipe.${key}`, value]),
    ),
  });
};

describe('REC-01 holds shirts to 385–400 °F', () => {
  // Common practice: 385–400 °F are 196.1–204.4 °C; 15 °F outside is far outside.
  it('knows the range in both scales', () => {
    expect(celsiusFromFahrenheit(385)).toBeCloseTo(196.1, 1);
    expect(celsiusFromFahrenheit(400)).toBeCloseTo(204.4, 1);
  });

  it.each([
    [369, 'F', 'stop cold'],
    [370.5, 'F', 'caution cold'],
    [384, 'F', 'caution cold'],
    [385, 'F', 'pass'],
    [400, 'F', 'pass'],
    [401, 'F', 'caution hot'],
    [415, 'F', 'caution hot'],
    [416, 'F', 'stop hot'],
    [187, 'C', 'stop cold'],
    [188, 'C', 'caution cold'],
    [195, 'C', 'caution cold'],
    [196, 'C', 'pass'],
    [204, 'C', 'pass'],
    [205, 'C', 'caution hot'],
    [212, 'C', 'caution hot'],
    [213, 'C', 'stop hot'],
    // Morton and Hearle: polyester melts at about 250 °C.
    [230, 'C', 'stop hot'],
    [230.1, 'C', 'stop melts'],
    [446.1, 'F', 'stop melts'],
  ])('%d °%s: %s', (value, unit, expected) => {
    expect(verdict(recipe({ temperature: { value, unit } }), 'REC-01')).toBe(expected);
  });

  it.each([
    [416, true],
    [450, false],
  ])('lets a reason pass %d °F: %s', (value, expected) => {
    const input = recipe({ temperature: { value, unit: 'F' } });
    expect(told(input, 'REC-01')[0]?.waivable).toBe(expected);
    const waiver = { finding: 'REC-01', placementId: null, lineId: null, reason: 'Slow press.' };
    expect(checkJob(changed(input, { 'job.waivers': [waiver] })).checked !== null).toBe(expected);
  });

  it.each([
    [300, 'F', 385],
    [440, 'F', 400],
    [150, 'C', 196],
    [240, 'C', 204],
  ])('from %d °%s its button sets %d', (value, unit, set) => {
    const input = recipe({ temperature: { value, unit } });
    const after = mended(input, told(input, 'REC-01')[0]);
    expect(after.job.lines[0]?.placements[0]?.recipe.temperature).toEqual({ value: set, unit });
    expect(verdict(after, 'REC-01')).toBe('pass');
  });

  it('holds mugs to their own row', () => {
    const at = (value: number) =>
      mugsWith({ 'job.lines.0.placements.0.recipe.temperature': { value, unit: 'F' } });
    expect([359, 360, 400, 401].map((value) => verdict(at(value), 'REC-01'))).toEqual([
      'caution cold',
      'pass',
      'pass',
      'caution hot',
    ]);
  });
});

describe('REC-02 holds the dwell to its row', () => {
  // Shirts 45–60 s: half the width is 7.5 s, so 15 s is far outside.
  it.each([
    [29.9, 'stop short'],
    [30, 'caution short'],
    [44.9, 'caution short'],
    [45, 'pass'],
    [60, 'pass'],
    [60.1, 'caution long'],
    [75, 'caution long'],
    [75.1, 'stop long'],
  ])('a shirt for %d s: %s', (dwellSeconds, expected) => {
    expect(verdict(recipe({ dwellSeconds }), 'REC-02')).toBe(expected);
  });

  // Mugs 150–300 s: half the width is 75 s.
  it.each([
    [74, 'stop short'],
    [75, 'caution short'],
    [375, 'caution long'],
    [376, 'stop long'],
  ])('a mug for %d s: %s', (dwell, expected) => {
    expect(verdict(mugsWith({ 'job.lines.0.placements.0.recipe.dwellSeconds': dwell }), 'REC-02')).toBe(
      expected,
    );
  });

  it('is mended by its button', () => {
    const input = recipe({ dwellSeconds: 300 });
    expect(verdict(mended(input, told(input, 'REC-02')[0]), 'REC-02')).toBe('pass');
  });
});

describe('REC-03 judges pressure', () => {
  it.each([
    [19.9, 'lightMedium', 'caution soft'],
    [20, 'lightMedium', 'pass'],
    [60, 'lightMedium', 'pass'],
    [60.1, 'lightMedium', 'caution hard'],
    [40, 'firm', 'caution hard'],
    [40, 'light', 'pass'],
  ])('a shirt at %d psi, %s: %s', (psi, pressure, expected) => {
    const input = recipe({ pressureKpa: kpaFromPsi(psi), pressure });
    expect(verdict(input, 'REC-03')).toBe(expected);
    if (expected !== 'pass') {
      expect(verdict(mended(input, told(input, 'REC-03')[0]), 'REC-03')).toBe('pass');
    }
  });

  it('does not miss a gauge', () => {
    expect(verdict(recipe({ pressureKpa: null }), 'REC-03')).toBe('pass');
  });

  it.each([
    ['light', 'caution soft'],
    ['lightMedium', 'caution soft'],
    ['medium', 'pass'],
    ['firm', 'pass'],
  ])('a mug, usually medium to firm, with %s: %s', (pressure, expected) => {
    const input = mugsWith({ 'job.lines.0.placements.0.recipe.pressure': pressure });
    expect(verdict(input, 'REC-03')).toBe(expected);
  });
});

describe('REC-04 sees through a slip between the scales', () => {
  it.each([
    [179, 'F', 'pass'],
    [180, 'F', 'stop F'],
    [215, 'F', 'stop F'],
    [216, 'F', 'pass'],
    [369, 'C', 'pass'],
    [370, 'C', 'stop C'],
    [390, 'C', 'stop C'],
    [420, 'C', 'stop C'],
    [421, 'C', 'pass'],
  ])('%d °%s: %s', (value, unit, expected) => {
    expect(verdict(recipe({ temperature: { value, unit } }), 'REC-04')).toBe(expected);
  });

  it('catches 390 °C, switches the scale with its button, and does not tell of the heat as well', () => {
    const input = recipe({ temperature: { value: 390, unit: 'C' } });
    const [finding] = told(input, 'REC-04');
    expect(finding?.waivable).toBe(false);
    expect(verdict(input, 'REC-01')).toBe('pass');
    const after = mended(input, finding);
    expect(after.job.lines[0]?.placements[0]?.recipe.temperature).toEqual({ value: 390, unit: 'F' });
    expect(checkJob(after).checked).not.toBeNull();
  });
});

describe('REC-05 wants moisture out of garments and wood', () => {
  it.each([
    [null, 'caution'],
    [0, 'caution'],
    [1, 'pass'],
  ])('a shirt preheated for %s s: %s', (preheatSeconds, expected) => {
    expect(verdict(recipe({ preheatSeconds }), 'REC-05')).toBe(expected);
  });

  it('asks hardboard, not mugs', () => {
    expect(verdict(mugsWith({}), 'REC-05')).toBe('pass');
    expect(verdict(mugsWith({ 'blank:white-mug.substrate': 'coatedHardboard' }), 'REC-05')).toBe('caution');
  });
});

describe('REC-06 wants fresh plain paper', () => {
  it.each([
    ['freshPlain', 'pass'],
    ['reused', 'caution reused'],
    ['parchment', 'caution parchment'],
    ['wax', 'caution wax'],
    ['ptfe', 'caution ptfe'],
    ['none', 'stop none'],
  ])('%s: %s', (protectivePaper, expected) => {
    const input = recipe({ protectivePaper });
    expect(verdict(input, 'REC-06')).toBe(expected);
    if (expected !== 'pass') expect(verdict(mended(input, told(input, 'REC-06')[0]), 'REC-06')).toBe('pass');
  });
});

describe('REC-12 asks how often the recipe worked', () => {
  it.each([
    [0, 'caution never'],
    [1, 'note seldom'],
    [9, 'note seldom'],
    [10, 'pass'],
  ])('%d good presses: %s', (provenPresses, expected) => {
    expect(verdict(recipe({ provenPresses }), 'REC-12')).toBe(expected);
  });

  it('speaks once for a blank, of the least proven placement', () => {
    const input = clubWith({ 'job.lines.0.placements.0.recipe.provenPresses': 50 });
    expect(told(input, 'REC-12').map(({ where }) => where.placementId)).toEqual(['badge']);
  });
});
