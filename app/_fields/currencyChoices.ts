import { currencyCodes } from '@/shared/tables/currencies';

/** Every currency with its name. */
export function currencyChoices(): readonly Readonly<{ value: string; label: string }>[] {
  const names = new Intl.DisplayNames('en', { type: 'currency' });
  return currencyCodes.map((value) => {
    const name = names.of(value);
    return { value, label: name === undefined || name === value ? value : `${value} · ${name}` };
  });
}
