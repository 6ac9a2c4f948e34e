import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mergeValues } from '@/lib/merging/mergeValues';
import { cases } from '@/tests/tools/cases';

describe('mergeValues', () => {
  it('takes each field from the side that changed it', () => {
    const base = { name: 'Club', customer: 'North', wage: 15 };
    expect(mergeValues(base, { ...base, name: 'Team' }, { ...base, wage: 16 })).toEqual({
      value: { name: 'Team', customer: 'North', wage: 16 },
      conflicts: [],
    });
  });

  it('takes mine where both changed a field, and tells the place', () => {
    expect(mergeValues({ a: { b: 1, c: 2 } }, { a: { b: 3, c: 2 } }, { a: { b: 4, c: 5 } })).toEqual({
      value: { a: { b: 3, c: 5 } },
      conflicts: [['a', 'b']],
    });
  });

  it('sees no conflict where both wrote the same', () => {
    expect(mergeValues({ a: 1 }, { a: 2 }, { a: 2 })).toEqual({ value: { a: 2 }, conflicts: [] });
  });

  it('drops a key that one side removed and the other left alone', () => {
    expect(mergeValues({ a: 1, b: 2 }, { b: 2 }, { a: 1, b: 3 }).value).toEqual({ b: 3 });
  });

  it('keeps a key called __proto__ a key', () => {
    const evil: unknown = JSON.parse('{"__proto__": {"x": 1}, "b": 1}');
    const merged = mergeValues({ b: 1, c: 1 }, evil, { b: 2, c: 1 }).value;
    expect(JSON.stringify(merged)).toBe('{"__proto__":{"x":1},"b":2}');
  });

  it('never mixes the value of one side with the unit of the other', () => {
    const wage = (value: number, unit: string, origin: string) => ({ wage: { value, unit, origin } });
    expect(
      mergeValues(
        wage(15, 'money/h', 'typical'),
        wage(16, 'money/h', 'yours'),
        wage(0.25, 'money/min', 'typical'),
      ),
    ).toEqual({ value: wage(16, 'money/h', 'yours'), conflicts: [['wage']] });
  });

  it('never mixes the parts of two colours', () => {
    const colour = (L: number, a: number) => ({ L, a, b: 0 });
    expect(mergeValues(colour(90, 0), colour(80, 0), colour(90, 7)).value).toEqual(colour(80, 0));
  });

  it('never mixes two shapes of a tagged value', () => {
    const total = { kind: 'total', total: 1 };
    const mine = { kind: 'channels', cyan: 1 };
    expect(mergeValues(total, mine, { kind: 'total', total: 2 })).toEqual({ value: mine, conflicts: [[]] });
  });

  describe('on lists', () => {
    const list = (...ids: readonly string[]) => ids.map((id) => ({ id, quantity: 1 }));

    it('edits of two items both stand', () => {
      const mine = [
        { id: 'a', quantity: 5 },
        { id: 'b', quantity: 1 },
      ];
      const theirs = [
        { id: 'a', quantity: 1 },
        { id: 'b', quantity: 7 },
      ];
      expect(mergeValues(list('a', 'b'), mine, theirs)).toEqual({
        value: [
          { id: 'a', quantity: 5 },
          { id: 'b', quantity: 7 },
        ],
        conflicts: [],
      });
    });

    it.each([
      { what: 'items added on both sides', base: 'a', mine: 'ab', theirs: 'ca', merged: 'cab' },
      {
        what: 'an item added to an empty list on both sides',
        base: '',
        mine: 'a',
        theirs: 'b',
        merged: 'ba',
      },
      {
        what: 'an item removed here and one added there',
        base: 'ab',
        mine: 'b',
        theirs: 'abc',
        merged: 'bc',
      },
      {
        what: 'a move here and an item added there',
        base: 'abc',
        mine: 'cab',
        theirs: 'abxc',
        merged: 'cabx',
      },
      {
        what: 'a move there and an item added here',
        base: 'abc',
        mine: 'abxc',
        theirs: 'cab',
        merged: 'cabx',
      },
    ])('$what come together', ({ base, mine, theirs, merged }) => {
      expect(mergeValues(list(...base), list(...mine), list(...theirs)).value).toEqual(list(...merged));
    });

    it('two different moves are a conflict, and mine decides', () => {
      expect(mergeValues(list(...'abc'), list(...'cab'), list(...'bca'))).toEqual({
        value: list(...'cab'),
        conflicts: [[]],
      });
    });

    it('sizes are known by their size', () => {
      const sizes = (small: number, large: number) => [
        { size: 'S', quantity: small },
        { size: 'L', quantity: large },
      ];
      expect(mergeValues(sizes(1, 1), sizes(2, 1), sizes(1, 9)).value).toEqual(sizes(2, 9));
    });

    it('items without identity are taken whole', () => {
      expect(mergeValues([1, 2], [1, 3], [4, 2])).toEqual({ value: [1, 3], conflicts: [[]] });
    });
  });

  describe('obeys the laws', () => {
    const json = fc.jsonValue({ maxDepth: 3 });

    it('one side that changed nothing loses nothing to the other', () => {
      fc.assert(
        fc.property(json, json, (base, other) => {
          expect(mergeValues(base, base, other)).toEqual({ value: other, conflicts: [] });
          expect(mergeValues(base, other, base)).toEqual({ value: other, conflicts: [] });
        }),
        cases(1000),
      );
    });

    it('an edit is undone by merging it backwards', () => {
      fc.assert(
        fc.property(json, json, (before, after) => {
          expect(mergeValues(after, before, after).value).toEqual(before);
        }),
        cases(1000),
      );
    });

    it('fields edited apart both arrive, whichever side is mine', () => {
      const record = fc.dictionary(fc.stringMatching(/^m[a-z]$/), fc.integer());
      const others = fc.dictionary(fc.stringMatching(/^t[a-z]$/), fc.integer());
      fc.assert(
        fc.property(record, record, others, others, (mineBefore, mineAfter, theirsBefore, theirsAfter) => {
          const base = { ...mineBefore, ...theirsBefore };
          const mine = { ...mineAfter, ...theirsBefore };
          const theirs = { ...mineBefore, ...theirsAfter };
          const both = { value: { ...mineAfter, ...theirsAfter }, conflicts: [] };
          expect(mergeValues(base, mine, theirs)).toEqual(both);
          expect(mergeValues(base, theirs, mine)).toEqual(both);
        }),
        cases(1000),
      );
    });
  });
});
