// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, describe, expect, it } from 'vitest';
import { RateField, type RateFieldProps } from '@/app/_fields/RateField';
import { MeasuresContext } from '@/app/_numbers/measures';
import { addDays } from '@/shared/days';
import type { Rate } from '@/shared/schemas/rate';
import type { RateUnit } from '@/shared/tables/rateCatalogue';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

afterEach(cleanup);

const units = { length: 'in', temperature: 'F', pressure: 'psi', volume: 'mL', distance: 'mi' } as const;
const wage: Rate = { value: 18, unit: 'money/h', date: TEST_DAY, origin: 'typical' };

type OwnerProps = Readonly<{
  first: Rate | null;
  given: Partial<RateFieldProps>;
  onCommit: (rate: Rate | null) => void;
}>;

function Owner({ first, given, onCommit }: OwnerProps) {
  const [rate, setRate] = useState(first);
  const commit = (next: Rate | null) => {
    onCommit(next);
    setRate(next);
  };
  const limits = { min: 0, max: 1e9 };
  const own = {
    label: 'Your pay',
    units: ['money/h'],
    limits,
    typical: 18,
    whenMissing: 'It is missing.',
  } as const;
  return <RateField {...own} {...given} rate={rate} onCommit={commit} />;
}

function setUp(first: Rate | null, given: Partial<RateFieldProps> = {}, currency = 'USD') {
  const kept: (Rate | null)[] = [];
  render(
    <MeasuresContext value={{ units, currency }}>
      <Owner first={first} given={given} onCommit={(rate) => kept.push(rate)} />
    </MeasuresContext>,
  );
  return { kept, user: userEvent.setup(), field: screen.getByRole('textbox', { name: 'Your pay' }) };
}

describe('RateField', () => {
  it('makes a typed value the maker’s own, of today', async () => {
    const { kept, user, field } = setUp({ ...wage, date: '2020-01-01', origin: 'measured', count: 12 });
    await user.tripleClick(field);
    await user.paste('21.50');
    expect(kept).toEqual([{ value: 21.5, unit: 'money/h', date: TEST_DAY, origin: 'yours' }]);
    expect(screen.getByText('yours')).toBeVisible();
  });

  it('keeps nothing, and not 0, where it is emptied, and says what that means', async () => {
    const { kept, user, field } = setUp(wage);
    await user.clear(field);
    expect(kept).toEqual([null]);
    expect(field).toHaveAccessibleDescription('USD an hour It is missing.');
  });

  it('goes back to the typical value by its button', async () => {
    const { kept, user } = setUp({ ...wage, value: 30, origin: 'yours' });
    await user.click(screen.getByRole('button', { name: 'Back to typical 18.00 USD an hour for Your pay' }));
    expect(kept).toEqual([wage]);
  });

  it('offers no typical amount in a currency far from the dollar', () => {
    setUp(null, {}, 'JPY');
    expect(screen.queryByRole('button')).not.toBeInTheDocument();
  });

  it('marks a value of the maker that was set long ago', () => {
    setUp({ ...wage, origin: 'yours', date: addDays(TEST_DAY, -91) });
    expect(screen.getByText('older than 90 days')).toBeVisible();
  });

  it('takes a share in percent and keeps it as a share', async () => {
    const units: readonly [RateUnit] = ['share'];
    const { kept, user, field } = setUp({ ...wage, value: 0.07, unit: 'share' }, { units, typical: 0.3 });
    expect(field).toHaveValue('7');
    await user.tripleClick(field);
    await user.paste('7.25');
    expect(field).toHaveValue('7.25');
    expect(kept.at(-1)).toMatchObject({ value: 0.0725, unit: 'share' });
  });

  it('keeps the meaning of a value whose unit is changed', async () => {
    const units: readonly [RateUnit, RateUnit] = ['mL/in2', 'mL/m2'];
    const { kept, user, field } = setUp({ ...wage, value: 0.0065, unit: 'mL/in2' }, { units, typical: null });
    await user.selectOptions(screen.getByRole('combobox', { name: 'Unit of Your pay' }), 'mL/m²');
    expect(kept).toEqual([{ ...wage, value: 10.07502015, unit: 'mL/m2' }]);
    expect(field).toHaveValue('10.07502015');
  });
});
