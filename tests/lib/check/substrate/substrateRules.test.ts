import { describe, expect, it } from 'vitest';
import { checkJob } from '@/lib/check/checkJob';
import { clubWith, mended, mugsWith, told, verdict } from '@/tests/fixtures/clubJob';

const fibres = (polyester: number, other: string, share = 1 - polyester) =>
  clubWith({
    'blank:white-shirt.fibres': [
      { fibre: 'polyester', share: polyester },
      { fibre: other, share },
    ],
  });

describe('SUB-01 judges how much of the cloth holds the dye', () => {
  it.each([
    [0.499, 'stop tooLittle'],
    [0.5, 'stop faded'],
    [0.6, 'stop faded'],
    [0.649, 'stop faded'],
    [0.65, 'caution muted'],
    [0.949, 'caution muted'],
    [0.95, 'pass'],
    [1, 'pass'],
  ])('%d polyester: %s', (polyester, expected) => {
    expect(verdict(fibres(polyester, 'cotton'), 'SUB-01')).toBe(expected);
  });

  it('adds up shares without the noise of binary fractions', () => {
    const shares = [0.35, 0.3].map((share) => ({ fibre: 'polyester', share }));
    const input = clubWith({
      'blank:white-shirt.fibres': [...shares, { fibre: 'cotton', share: 0.35 }],
    });
    expect(verdict(input, 'SUB-01')).toBe('caution muted');
  });

  it('stops cloth of which nothing is known', () => {
    expect(verdict(clubWith({ 'blank:white-shirt.fibres': [] }), 'SUB-01')).toBe('stop unknown');
  });

  // 16 CFR 303.43 (from memory): a label may be off by 3 % of the total fibre weight.
  it.each([
    [0.03, 'pass'],
    [0.031, 'caution sum'],
  ])('asks about a label that adds up to 1 + %d: %s', (over, expected) => {
    expect(verdict(fibres(1, 'cotton', over), 'SUB-01')).toBe(expected);
  });

  it('keeps quiet about mugs', () => {
    expect(verdict(mugsWith({}), 'SUB-01')).toBe('pass');
  });
});

describe('SUB-02 stops cloth without any polyester', () => {
  it.each(['cotton', 'wool', 'viscose'])('%s', (fibre) => {
    const input = clubWith({ 'blank:white-shirt.fibres': [{ fibre, share: 1 }] });
    expect(verdict(input, 'SUB-02')).toBe('stop');
    expect(verdict(input, 'SUB-01')).toBe('pass');
  });

  it('leaves nylon to SUB-01', () => {
    const input = clubWith({ 'blank:white-shirt.fibres': [{ fibre: 'nylon', share: 1 }] });
    expect(verdict(input, 'SUB-02')).toBe('pass');
    expect(verdict(input, 'SUB-01')).toBe('stop tooLittle');
  });
});

// CIE L*a*b*, ISO/CIE 11664-4; the limits are practice, from memory.
describe('SUB-04 judges the colour of the cloth', () => {
  it.each([
    [90, 5, 0, 'pass'],
    [90, 5.1, 0, 'note nearWhite'],
    [89.9, 0, 0, 'note nearWhite'],
    [85, 0, 15, 'note nearWhite'],
    [85, 0, 15.1, 'caution tint'],
    [84.9, 0, 0, 'caution tint'],
    [95, 12, 10, 'caution tint'],
    [70, 0, 0, 'caution tint'],
    [69.9, 0, 0, 'stop dark'],
  ])('L* %d, a* %d, b* %d: %s', (L, a, b, expected) => {
    const input = clubWith({ 'blank:white-shirt.colour': { name: 'grey', L, a, b } });
    expect(verdict(input, 'SUB-04')).toBe(expected);
  });

  it('keeps quiet about mugs', () => {
    const input = mugsWith({ 'blank:white-mug.colour': { name: 'black', L: 10, a: 0, b: 0 } });
    expect(verdict(input, 'SUB-04')).toBe('pass');
  });
});

describe('SUB-06 wants a coating on hard goods', () => {
  it.each([
    ['coated', 'pass'],
    ['uncoated', 'stop uncoated'],
    ['unknown', 'stop unknown'],
    ['cloth', 'stop unknown'],
  ])('%s: %s', (coating, expected) => {
    expect(verdict(mugsWith({ 'blank:white-mug.coating': coating }), 'SUB-06')).toBe(expected);
  });

  it('lets a mat have a face of cloth', () => {
    const input = mugsWith({
      'blank:white-mug.coating': 'cloth',
      'blank:white-mug.kind': 'mat',
    });
    expect(verdict(input, 'SUB-06')).toBe('pass');
  });
});

describe('SUB-09 keeps below what the blank bears', () => {
  // 200 °C set; the limit is near from 5 °C above.
  const at = (most: number) =>
    clubWith({
      'blank:white-shirt.maxTemperatureC': most,
      'job.lines.0.placements.0.recipe.temperature': { value: 200, unit: 'C' },
    });

  it.each([
    [199.9, 'stop over'],
    [200, 'caution near'],
    [204.9, 'caution near'],
    [205, 'pass'],
  ])('%d °C at most: %s', (most, expected) => {
    const [finding] = told(at(most), 'SUB-09').filter(({ where }) => where.placementId === 'back');
    expect(finding === undefined ? 'pass' : `${finding.severity} ${finding.variant}`).toBe(expected);
  });

  it('is never waived, and its button sets a temperature the blank bears', () => {
    const input = at(190);
    const [finding] = told(input, 'SUB-09');
    expect(finding?.waivable).toBe(false);
    const after = mended(input, finding);
    expect(after.job.lines[0]?.placements[0]?.recipe.temperature).toEqual({ value: 185, unit: 'C' });
    // The sheet of the blank's maker wins over the table: no word about a cool press.
    expect(told(after, 'REC-01').filter(({ where }) => where.placementId === 'back')).toEqual([]);
  });
});

describe('SUB-12 looks for raised parts', () => {
  it.each([
    ['none', true, 'pass'],
    ['underPlaten', true, 'note relieved'],
    ['underPlaten', false, 'caution bare'],
    ['insidePrint', true, 'stop inside'],
  ])('%s, relief planned %s: %s', (raisedParts, relief, expected) => {
    const input = clubWith({
      'job.lines.0.placements.1.raisedParts': raisedParts,
      'job.lines.0.placements.1.recipe.reliefFromRaisedParts': relief,
    });
    expect(verdict(input, 'SUB-12')).toBe(expected);
    expect(checkJob(input).checked === null).toBe(expected.startsWith('stop'));
  });
});
