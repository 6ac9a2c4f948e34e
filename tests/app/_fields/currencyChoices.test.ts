import { describe, expect, it } from 'vitest';
import { currencyChoices } from '@/app/_fields/currencyChoices';

describe('currencyChoices', () => {
  const choices = currencyChoices('SEK');

  it('names each currency once, none twice, and none only by its code where it has a name', () => {
    expect(new Set(choices.map(({ value }) => value)).size).toBe(choices.length);
    expect(new Set(choices.map(({ label }) => label)).size).toBe(choices.length);
    expect(choices.length).toBeGreaterThan(140);
    expect(choices.find(({ value }) => value === 'EUR')?.label).toBe('Euro · EUR');
    expect(choices.find(({ value }) => value === 'USD')?.label).toBe('US Dollar · USD');
  });

  it('has the one in use first and all others by their names', () => {
    expect(choices[0]?.value).toBe('SEK');
    const names = choices.slice(1).map(({ label }) => label);
    expect(names).toEqual(names.toSorted((one, other) => one.localeCompare(other, 'en')));
  });

  it('leaves out money of funds and accounts, unless it is in use', () => {
    expect(choices.map(({ value }) => value)).not.toContain('USN');
    expect(currencyChoices('USN')[0]?.value).toBe('USN');
  });
});
