import { describe, expect, it } from 'vitest';
import { checkJob } from '@/lib/check/checkJob';
import { clubWith, mended, mugsWith, told, verdict } from '@/tests/fixtures/clubJob';

const fibres = (shares: Readonly<Record<string, number>>) => ({
  'blank:white-shirt.fibres': Object.entries(shares).map(([fibre, share]) => ({ fibre, share })),
});
const traits = (fields: Readonly<Record<string, unknown>>) =>
  Object.fromEntries(
    Object.entries(fields).map(([key, value]) => [`blank:white-shirt.traits.${key}`, value]),
  );
const noTest = { 'job.lines.0.placements.0.testPresses': 0 };

// Elastane above 10 %, low-melting fibres above 20 %: common practice, from memory.
describe('SUB-03 knows fibres that do not stand the press', () => {
  it.each([
    [{ polyester: 0.9, elastane: 0.1 }, 'pass'],
    [{ polyester: 0.89, elastane: 0.11 }, 'caution stretch'],
    [{ polyester: 0.8, nylon: 0.2 }, 'pass'],
    [{ polyester: 0.79, nylon: 0.21 }, 'stop lowMelt'],
    [{ polyester: 0.79, acrylic: 0.11, acetate: 0.1 }, 'stop lowMelt'],
    // Sums of binary fractions: 0.1 + 0.1 is 20 %, not above.
    [{ polyester: 0.8, acrylic: 0.1, acetate: 0.1 }, 'pass'],
  ])('%j: %s', (shares, expected) => {
    expect(verdict(clubWith(fibres(shares)), 'SUB-03')).toBe(expected);
  });

  it('lets the stop pass with a reason, and says nothing of a mug', () => {
    expect(told(clubWith(fibres({ polyester: 0.7, nylon: 0.3 })), 'SUB-03')[0]?.waivable).toBe(true);
    expect(verdict(mugsWith({ 'blank:white-mug.fibres': [{ fibre: 'nylon', share: 0.5 }] }), 'SUB-03')).toBe(
      'pass',
    );
  });
});

describe('SUB-07 asks which face is coated', () => {
  it.each([
    ['panel', 'unknown', 'caution'],
    ['tile', 'unknown', 'caution'],
    ['small', 'unknown', 'caution'],
    ['panel', 'marked', 'pass'],
    ['panel', 'both', 'pass'],
    ['drinkware', 'unknown', 'pass'],
    ['mat', 'unknown', 'pass'],
  ])('a %s whose face is %s: %s', (kind, coatedFace, expected) => {
    const input = mugsWith({
      'blank:white-mug.kind': kind,
      'blank:white-mug.traits.coatedFace': coatedFace,
    });
    expect(verdict(input, 'SUB-07')).toBe(expected);
    expect(told(input, 'SUB-07').length).toBeLessThan(2);
    if (expected !== 'pass') expect(verdict(mended(input, told(input, 'SUB-07')[0]), 'SUB-07')).toBe('pass');
  });

  it('leaves an uncoated panel to SUB-06', () => {
    const input = mugsWith({ 'blank:white-mug.kind': 'panel', 'blank:white-mug.coating': 'unknown' });
    expect(verdict(input, 'SUB-07')).toBe('pass');
    expect(verdict(input, 'SUB-06')).toBe('stop unknown');
  });
});

// 30 to 40 s and light pressure for performance cloth: common practice.
describe('SUB-10 handles delicate cloth gently', () => {
  const pressed = (dwellSeconds: number, pressure: string, tests: number) => ({
    'job.lines.0.placements.0.recipe.dwellSeconds': dwellSeconds,
    'job.lines.0.placements.1.recipe.dwellSeconds': dwellSeconds,
    'job.lines.0.placements.0.recipe.pressure': pressure,
    'job.lines.0.placements.1.recipe.pressure': pressure,
    'job.lines.0.placements.0.testPresses': tests,
  });

  it.each([
    ['performance', 40, 'light', 1, 'note followed'],
    ['performance', 41, 'light', 1, 'caution performance'],
    ['performance', 40, 'lightMedium', 1, 'caution performance'],
    ['performance', 40, 'light', 0, 'caution performance'],
    ['heather', 55, 'light', 1, 'note followed'],
    ['heather', 55, 'lightMedium', 1, 'caution heather'],
    ['plain', 55, 'lightMedium', 0, 'pass'],
    ['unknown', 55, 'lightMedium', 0, 'pass'],
  ])('%s, %d s, %s, %d tests: %s', (finish, seconds, pressure, tests, expected) => {
    expect(verdict(clubWith({ ...traits({ finish }), ...pressed(seconds, pressure, tests) }), 'SUB-10')).toBe(
      expected,
    );
  });

  it('goes by the row of the recipe table as well', () => {
    expect(verdict(clubWith({ 'blank:white-shirt.substrate': 'performancePolyester' }), 'SUB-10')).toBe(
      'caution performance',
    );
  });

  it.each(['performance', 'heather'])('is mended for %s in one tap, without another caution', (finish) => {
    const input = clubWith({ ...traits({ finish }), ...noTest });
    const after = mended(input, told(input, 'SUB-10')[0]);
    expect(verdict(after, 'SUB-10')).toBe('note followed');
    const cautions = (of: typeof input) =>
      checkJob(of).findings.flatMap(({ id, severity }) => (severity === 'note' ? [] : [id]));
    expect(cautions(after)).toEqual(cautions(input).filter((id) => id !== 'SUB-10'));
  });
});

describe('SUB-11 watches the cloth’s own dye', () => {
  const colour = (a: number) => ({ 'blank:white-shirt.colour': { name: 'rose', L: 86, a, b: 0 } });

  it.each([
    [true, 0, 'caution dyed'],
    [false, 40, 'pass'],
    [null, 15, 'pass'],
    [null, 15.1, 'caution coloured'],
  ])('dyed %s, C* %d: %s', (dyed, chroma, expected) => {
    expect(verdict(clubWith({ ...traits({ dyed }), ...colour(chroma), ...noTest }), 'SUB-11')).toBe(expected);
  });

  it('is content with a test and fresh paper, which one tap plans', () => {
    const input = clubWith({
      ...traits({ dyed: true }),
      ...noTest,
      'job.lines.0.placements.1.recipe.protectivePaper': 'reused',
    });
    const after = mended(input, told(input, 'SUB-11')[0]);
    expect(verdict(after, 'SUB-11')).toBe('note followed');
    expect(after.job.lines[0]?.placements.map(({ recipe }) => recipe.protectivePaper)).toEqual([
      'freshPlain',
      'freshPlain',
    ]);
  });

  it('does not speak of cloth without polyester', () => {
    expect(verdict(clubWith({ ...traits({ dyed: true }), ...fibres({ cotton: 1 }) }), 'SUB-11')).toBe('pass');
  });
});

describe('SUB-13 notices another lot', () => {
  it.each([
    ['', '', 0, 'pass'],
    ['B7', 'B7', 0, 'pass'],
    ['B7', 'A3', 0, 'note otherLot'],
    ['B7', '', 0, 'caution first'],
    ['B7', '', 1, 'pass'],
  ])('lot “%s” after “%s” with %d tests: %s', (lot, provenLot, testPresses, expected) => {
    const input = clubWith({
      ...traits({ lot, provenLot }),
      'job.lines.0.placements.0.testPresses': testPresses,
    });
    expect(verdict(input, 'SUB-13')).toBe(expected);
    if (expected !== 'pass') expect(verdict(mended(input, told(input, 'SUB-13')[0]), 'SUB-13')).toBe('pass');
  });
});

// One channel fully, over the box: common practice, from memory.
describe('SUB-14 looks at what lies behind the print', () => {
  it.each([
    ['bag', 'two', 1, 'caution two'],
    ['bag', 'two', 0.99, 'pass'],
    ['cushion', 'two', 1, 'caution two'],
    ['bag', 'unknown', 1, 'note unknown'],
    ['bag', 'one', 3, 'pass'],
    ['garment', 'two', 1, 'pass'],
  ])('a %s of layers %s under ink of %d: %s', (kind, layers, total, expected) => {
    const input = clubWith({
      'blank:white-shirt.kind': kind,
      ...traits({ layers }),
      'artwork:hill-path.coverage': { kind: 'total', total },
      'artwork:club-crest.coverage': { kind: 'total', total: 0.5 },
      'job.lines.0.placements.0.recipe.barrierPaper': false,
    });
    expect(verdict(input, 'SUB-14')).toBe(expected);
    if (expected !== 'pass') expect(verdict(mended(input, told(input, 'SUB-14')[0]), 'SUB-14')).toBe('pass');
  });
});
