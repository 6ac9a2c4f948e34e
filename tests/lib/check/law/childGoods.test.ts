import { describe, expect, it } from 'vitest';
import { checkJob } from '@/lib/check/checkJob';
import { mmFromInches } from '@/shared/units';
import { clubWith, mended, mugsWith, told, verdict } from '@/tests/fixtures/clubJob';

/** The club's shirt with its smallest size called otherwise, and pieces of it wanted. */
const sized = (name: string, fields: Readonly<Record<string, unknown>> = {}) =>
  clubWith({
    'blank:white-shirt.forChildren': null,
    'blank:white-shirt.sizes.0.name': name,
    'blank:white-shirt.sizes.0.maxPrints': [],
    'job.lines.0.quantities.0.size': name,
    ...fields,
  });

describe('QTY-06 sees a child’s size in an order', () => {
  it.each([
    ['S', null, 'pass'],
    ['Youth M', null, 'caution'],
    ['Youth M', false, 'caution'],
    ['Youth M', true, 'pass'],
    ['5-6 years', null, 'caution'],
    ['104', null, 'caution'],
    ['104', false, 'pass'],
  ])('%s on a shirt said to be for children: %s is %s', (name, forChildren, expected) => {
    expect(verdict(sized(name, { 'blank:white-shirt.forChildren': forChildren }), 'QTY-06')).toBe(expected);
  });

  it('opens the checks of goods for children before anybody says so, and goes once they do', () => {
    const input = sized('Youth M');
    expect(verdict(input, 'LAW-02')).toBe('caution meant');
    const after = mended(input, told(input, 'QTY-06')[0]);
    expect(verdict(after, 'QTY-06')).toBe('pass');
    expect(verdict(after, 'LAW-02')).toBe('caution meant');
  });

  it('does not ask of a size nobody wants, nor of a panel with such a number', () => {
    expect(verdict(sized('Youth M', { 'job.lines.0.quantities.0.quantity': 0 }), 'QTY-06')).toBe('pass');
    const panel = { 'blank:white-mug.kind': 'panel', 'blank:white-mug.forChildren': null };
    const size = { 'blank:white-mug.sizes.0.name': '104' };
    const wanted = {
      'job.lines': mugsWith({}).job.lines.map((line) => ({
        ...line,
        quantities: [{ size: '104', quantity: 5 }],
      })),
    };
    expect(verdict(mugsWith({ ...panel, ...size, ...wanted }), 'QTY-06')).toBe('pass');
  });
});

// Youth about 9 × 12 in, toddler about 6 × 6 in: common practice.
describe('PLC-01 holds a child’s print to what is usual where the blank states nothing', () => {
  const print = (name: string, width: number, height: number) =>
    sized(name, {
      'artwork:hill-path.pixels': null,
      'job.lines.0.placements.0.prints': [
        { sizes: null, widthMm: mmFromInches(width), heightMm: mmFromInches(height) },
      ],
    });

  it.each([
    ['Youth M', 8.55, 11.4, 'pass'],
    ['Youth M', 8.6, 11.4, 'caution near'],
    ['Youth M', 9, 10, 'caution near'],
    ['Youth M', 9.1, 10, 'stop over'],
    ['4T', 5.7, 5.7, 'pass'],
    ['4T', 6, 6, 'caution near'],
    ['4T', 6.1, 6, 'stop over'],
  ])('%s at %d × %d in: %s', (name, width, height, expected) => {
    expect(verdict(print(name, width, height), 'PLC-01')).toBe(expected);
  });

  it('gives the child’s size a smaller print of its own, in one tap', () => {
    const input = print('4T', 8, 8);
    const after = mended(input, told(input, 'PLC-01')[0]);
    expect(after.job.lines[0]?.placements[0]?.prints).toMatchObject([
      { sizes: null, widthMm: mmFromInches(8) },
      { sizes: ['4T'], widthMm: mmFromInches(5.7) },
    ]);
    expect(verdict(after, 'PLC-01')).toBe('pass');
  });
});

describe('LAW-03 stops what needs evidence', () => {
  it.each([
    [null, [], 'pass'],
    [true, [], 'pass'],
    [true, ['sleepwear'], 'stop said'],
    [null, ['cords'], 'stop said'],
    [false, ['cords'], 'pass'],
    [false, ['bib'], 'stop said'],
    [false, ['underThree'], 'stop said'],
  ])('for children %s, with %j: %s', (forChildren, childRisks, expected) => {
    const input = clubWith({
      'blank:white-shirt.forChildren': forChildren,
      'blank:white-shirt.traits.childRisks': childRisks,
    });
    expect(verdict(input, 'LAW-03')).toBe(expected);
  });

  it.each([
    ['2T', 'stop sizes'],
    ['3T', 'pass'],
    ['92', 'stop sizes'],
    ['98', 'pass'],
    ['24-36 months', 'stop sizes'],
  ])('by the size %s: %s', (name, expected) => {
    expect(verdict(sized(name), 'LAW-03')).toBe(expected);
  });

  it.each([
    ['2T', 'caution denied', 'caution denied'],
    ['6 months', 'caution denied', 'caution denied'],
    ['5-6 years', 'pass', 'caution denied'],
    ['92', 'pass', 'pass'],
    ['S', 'pass', 'pass'],
  ])('asks where %s is said not to be for children: %s, with LAW-02 %s', (name, expected, law02) => {
    const input = sized(name, { 'blank:white-shirt.forChildren': false });
    expect(verdict(input, 'LAW-03')).toBe(expected);
    expect(verdict(input, 'LAW-02')).toBe(law02);
  });

  it('goes on with a reason', () => {
    const input = sized('2T', {
      'job.waivers': [
        { finding: 'LAW-03', placementId: null, lineId: null, reason: 'Tested by the supplier.' },
      ],
    });
    expect(told(input, 'LAW-03')[0]?.waivedBecause).toBe('Tested by the supplier.');
    expect(checkJob(input).findings.filter(({ id }) => id === 'LAW-03')).toHaveLength(1);
  });
});
