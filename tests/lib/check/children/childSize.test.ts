import { describe, expect, it } from 'vitest';
import { childSizes } from '@/lib/check/children/childSize';

const read = (names: readonly string[], forChildren: boolean | null = null) =>
  Object.fromEntries(childSizes(names, forChildren));

describe('a child’s size is known by its name', () => {
  // Words and letters as suppliers write them: common practice.
  it.each([
    ['Youth M', 'youth'],
    ['youth xl', 'youth'],
    ['Kids 8', 'youth'],
    ['Boys L', 'youth'],
    ['YS', 'youth'],
    ['YXL', 'youth'],
    ['Toddler 4', 'toddler'],
    ['Newborn', 'baby'],
    ['2T', 'baby'],
    ['3T', 'toddler'],
    ['5T', 'toddler'],
    ['6 M', 'baby'],
    ['6-12 months', 'baby'],
    ['24–36 M', 'baby'],
    ['36 months', 'toddler'],
    ['2 years', 'baby'],
    ['3-4 years', 'toddler'],
    ['5-6 years', 'youth'],
    ['12/13 yrs', 'youth'],
    ['13 years', 'youth'],
    ['age 7', 'youth'],
  ])('%s: %s', (name, child) => {
    expect(read([name])).toEqual({ [name]: child });
  });

  it.each(['S', 'M', 'XL', '2XL', 'Adult M', '14 years', 'One size', '11 oz', '5 × 7 in', 'M tall', 'Tall'])(
    '%s is no child’s',
    (name) => {
      expect(read([name])).toEqual({});
    },
  );
});

// Pairs as suppliers of children's clothes write them: common practice. Sizes of grown-ups are two apart.
describe('bare pairs of ages', () => {
  it('are read beside others of that sort', () => {
    expect(read(['2/3', '3/4', '5/6', '7/8', '9-11', '12-14', '14/16'])).toEqual({
      '2/3': 'baby',
      '3/4': 'toddler',
      '5/6': 'youth',
      '7/8': 'youth',
      '9-11': 'youth',
      '12-14': 'youth',
    });
  });

  it('may stand beside letters, and beside a single age', () => {
    expect(read(['4', '5/6', '7/8', 'M'])).toEqual({ 4: 'toddler', '5/6': 'youth', '7/8': 'youth' });
  });

  it.each([
    ['sizes of women', ['4/6', '8/10', '12/14']],
    ['sizes of women in Europe', ['36/38', '40/42']],
    ['one pair', ['5/6', 'S', 'M']],
    ['numbers of grown-ups beside them', ['5/6', '7/8', '38', '40']],
  ])('are not mistaken for %s', (_, names) => {
    expect(read(names)).toEqual({});
  });

  it('are not read where the maker says that it is not for children', () => {
    expect(read(['5/6', '7/8'], false)).toEqual({});
  });
});

// EN 13402-3: body heights in steps of 6 cm; ages by height and grown-ups' numbers from memory.
describe('heights of EN 13402-3', () => {
  it('are read in steps of six centimetres', () => {
    expect(read(['92', '98', '110', '116', '164', '170'])).toEqual({
      92: 'baby',
      98: 'toddler',
      110: 'toddler',
      116: 'youth',
      164: 'youth',
    });
  });

  it('may stand in pairs, and with their unit', () => {
    expect(read(['98/104', '110-116', '128 cm'])).toEqual({
      '98/104': 'toddler',
      '110-116': 'youth',
      '128 cm': 'youth',
    });
  });

  it.each([
    ['long sizes of men', ['94', '98', '102', '106', '110']],
    ['sizes of men', ['44', '46', '48', '50', '52', '54', '56']],
    ['one size of men', ['50']],
    ['sizes of women', ['36', '38', '40', '42']],
    ['tall heights alone', ['170', '176']],
  ])('are not mistaken for %s', (_, names) => {
    expect(read(names)).toEqual({});
  });

  it('are not read where the maker says that it is not for children; words are', () => {
    expect(read(['98', '104'], false)).toEqual({});
    expect(read(['Youth M'], false)).toEqual({ 'Youth M': 'youth' });
  });
});
