import { describe, expect, it } from 'vitest';
import { byNumber, newestVersion, nextNumber } from '@/lib/priceLists/versionOrder';

const hour = (day: string, time = '12:00') => Date.parse(`${day}T${time}:00Z`);

/** A version by its number as it is written, and when it went out. */
const version = (name: string, at: number) => {
  const [, count, letter] = /^(\d+)([A-Z]?)$/.exec(name) ?? [];
  return {
    name,
    number: { count: Number(count), letter: letter || null },
    device: letter === '' ? `old${name}` : `device${letter}`,
    at,
  };
};
const newest = (...versions: readonly ReturnType<typeof version>[]) => newestVersion(versions)?.name ?? null;

describe('versions of a list', () => {
  it('are counted by number, those of one number by their letters', () => {
    const at = hour('2026-11-02');
    const names = ['3M', '10K', '3K', '2'].map((name) => version(name, at)).sort(byNumber);
    expect(names.map(({ name }) => name)).toEqual(['2', '3K', '3M', '10K']);
  });

  it('have no newest while nothing went out', () => {
    expect(newest()).toBeNull();
  });

  it('of two devices that did not know of each other: the later hour is the newest', () => {
    const here = [version('3K', hour('2026-11-02')), version('4K', hour('2026-11-03'))];
    expect(newest(...here, version('3M', hour('2026-11-04')))).toBe('3M');
    expect(newest(version('3M', hour('2026-11-01')), ...here)).toBe('4K');
  });

  it('of one hour: the higher number is the newest', () => {
    const at = hour('2026-11-02');
    expect(newest(version('4M', at), version('3K', at))).toBe('4M');
  });

  it('of one device: the higher number is the newest, whatever its clock did', () => {
    expect(newest(version('3K', hour('2026-11-05')), version('4K', hour('2026-11-02')))).toBe('4K');
    // Its clock had shown the fifth, so that the fourth on another device was before.
    expect(
      newest(
        version('3K', hour('2026-11-05')),
        version('4K', hour('2026-11-02')),
        version('3M', hour('2026-11-04')),
      ),
    ).toBe('4K');
  });

  it('from before papers had letters come before what went out later on their day', () => {
    const before = [version('1', hour('2026-03-02')), version('2', hour('2026-11-25'))];
    expect(newest(...before)).toBe('2');
    expect(newest(...before, version('3K', hour('2026-11-25', '08:15')))).toBe('3K');
    expect(newest(...before, version('3K', hour('2026-10-01')))).toBe('2');
  });

  it('get the number after the highest, withdrawn ones among them', () => {
    expect(nextNumber([], null)).toEqual({ count: 1, letter: null });
    const some = [version('2', hour('2026-11-02')), version('7M', hour('2026-11-01'))];
    expect(nextNumber(some, 'K')).toEqual({ count: 8, letter: 'K' });
  });
});
