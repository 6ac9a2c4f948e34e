import { describe, expect, it } from 'vitest';
import { carriedName, copyName } from '@/app/_copies/copyName';

/** By the clock on the wall, in the zone of whoever looks. */
const made = new Date(2026, 10, 26, 14, 5);

describe('the name of a file that goes out', () => {
  it('tells two copies of one day apart, and the one made before all was replaced', () => {
    expect(copyName(made, false)).toBe('pressminute-2026-11-26-1405.zip');
    expect(copyName(made, true)).toBe('pressminute-2026-11-26-1405-before-replacing.zip');
  });

  it('tells two files of one job apart, and holds no sign that a system refuses', () => {
    expect(carriedName('New job', made)).toBe('New job 2026-11-26-1405.zip');
    expect(carriedName('Mugs 3/4', made)).toBe('Mugs 3 4 2026-11-26-1405.zip');
  });
});
