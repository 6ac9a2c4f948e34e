import { currencyCodes } from '@/shared/tables/currencies';

/** Units of account, funds and next-day money: in the standard, and in nobody's till. */
const inNoTill = 'BOV CHE CHW CLF COU MXV USN UYI UYW XAD'.split(' ');

/**
 * Every currency by its name, once each: the one in use first, then all others in the order of their names.
 *
 * @param inUse ISO 4217 code
 */
export function currencyChoices(inUse: string): readonly Readonly<{ value: string; label: string }>[] {
  const names = new Intl.DisplayNames('en', { type: 'currency' });
  const choices = currencyCodes
    .filter((code) => code === inUse || !inNoTill.includes(code))
    .map((value) => {
      const name = names.of(value) ?? value;
      return { value, name, label: name === value ? value : `${name} · ${value}` };
    })
    .toSorted((one, other) => one.name.localeCompare(other.name, 'en'));
  return [
    ...choices.filter(({ value }) => value === inUse),
    ...choices.filter(({ value }) => value !== inUse),
  ].map(({ value, label }) => ({ value, label }));
}
