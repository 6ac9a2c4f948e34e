// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { type ComponentProps, useState } from 'react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { EntryForm } from '@/app/_fields/EntryForm';
import { NumberField } from '@/app/_fields/NumberField';
import { NumberLocale } from '@/app/_numbers/numberLocale';

afterEach(cleanup);

type Props = Partial<ComponentProps<typeof NumberField>>;

type OwnerProps = Readonly<{ given: Props; first: number | null; onCommit: (value: number | null) => void }>;

/** Keeps each commit at once, as the screens do; its button stands for an undo. */
function Owner({ given, first, onCommit }: OwnerProps) {
  const [value, setValue] = useState(first);
  const commit = (next: number | null) => {
    onCommit(next);
    setValue(next);
  };
  return (
    <>
      <NumberField label="Width" unit="in" {...given} value={value} onCommit={commit} />
      <button type="button" onClick={() => setValue(8)}>
        Back to 8
      </button>
    </>
  );
}

function setUp(props: Props = {}, locale = 'en') {
  const onCommit = vi.fn<(value: number | null) => void>();
  const view = render(
    <NumberLocale value={locale}>
      <Owner given={props} first={props.value === undefined ? 3 : props.value} onCommit={onCommit} />
    </NumberLocale>,
  );
  const field = screen.getByRole('textbox', { name: 'Width' });
  return { field, onCommit, user: userEvent.setup(), ...view };
}

async function type(given: ReturnType<typeof setUp>, text: string) {
  await given.user.clear(given.field);
  given.onCommit.mockClear();
  await given.user.type(given.field, text);
}

describe('the figure that stays in force', () => {
  it.each([
    [1, 'pieces', '1 piece stays in force.'],
    [1, 'presses', '1 press stays in force.'],
    [2, 'pieces', '2 pieces stays in force.'],
    [1, 's', '1 s stays in force.'],
  ])('of %d %s is told as “%s”', async (value, unit, told) => {
    const given = setUp({ value, unit, needed: true });
    await type(given, 'x');
    expect(document.body).toHaveTextContent(told);
  });
});

describe('a figure that is no number', () => {
  it('of a form that is entered whole leaves nothing in force, for nothing of it is kept yet', async () => {
    render(
      <NumberLocale value="en">
        <EntryForm label="Payment" missing={undefined} onEnter={() => undefined}>
          <Owner given={{}} first={2000} onCommit={() => undefined} />
        </EntryForm>
      </NumberLocale>,
    );
    const field = screen.getByRole('textbox', { name: 'Width' });
    await userEvent.clear(field);
    await userEvent.type(field, '200,50');
    expect(field).toHaveAccessibleDescription(
      'in 200,50 could be misread: decimals follow a point here. Type 200.50.',
    );
  });

  it('in an empty field names what holds instead, where something does', async () => {
    const whenEmpty = 'Until then the workshop’s holds: 50 %.';
    const given = setUp({ value: null, whenEmpty });
    await type(given, 'x');
    expect(given.field).toHaveAccessibleDescription(
      'in “x” is no part of a number. Until then the workshop’s holds: 50 %.',
    );
  });
});

describe('NumberField commits', () => {
  it('with every key that makes a number', async () => {
    const given = setUp();
    await type(given, '12');
    expect(given.onCommit.mock.calls).toEqual([[1], [12]]);
  });

  it('nothing where the field is emptied, if the document has a place for that', async () => {
    const given = setUp();
    await given.user.clear(given.field);
    expect(given.onCommit).toHaveBeenCalledExactlyOnceWith(null);
  });

  it('no nothing where a number is needed, and says so when the field is left', async () => {
    const given = setUp({ needed: true });
    await given.user.clear(given.field);
    expect(given.field).not.toHaveAttribute('aria-invalid');
    await given.user.tab();
    expect(given.onCommit).not.toHaveBeenCalled();
    expect(given.field).toBeInvalid();
    expect(given.field).toHaveAccessibleDescription('in A number is needed here. 3 in stays in force.');
  });

  it('a pasted number with its groups', async () => {
    const given = setUp();
    await given.user.clear(given.field);
    await given.user.paste('1,234,567');
    expect(given.onCommit).toHaveBeenLastCalledWith(1234567);
  });

  it('in the locale of the workshop', async () => {
    const given = setUp({}, 'de');
    await type(given, '2,5');
    expect(given.onCommit).toHaveBeenLastCalledWith(2.5);
  });

  it('no value that was only looked at, though it has more decimals than are shown', async () => {
    const given = setUp({ value: 1 / 3, minDecimals: 2 });
    await given.user.click(given.field);
    await given.user.tab();
    expect(given.onCommit).not.toHaveBeenCalled();
  });
});

describe('NumberField keeps a text that is no number exactly as typed', () => {
  it.each([
    ['1,00', '1,00 could be misread: decimals follow a point here. Type 1.00. 3 in stays in force.'],
    [
      '1.234,56',
      '1.234,56 could be misread: decimals follow a point here. Type 1234.56. 3 in stays in force.',
    ],
    ['1e5', '1e5 is a short form. Write the number out: 100000. 3 in stays in force.'],
    ['5%', 'Only the number goes here, without the percent sign. Type 5. 3 in stays in force.'],
    ['$5', 'Only the number goes here, without $. Type 5. 3 in stays in force.'],
    ['12 3', 'A space stands inside 12 3. Write one number without spaces. 3 in stays in force.'],
    ['0x10', '“x” is no part of a number. 3 in stays in force.'],
    ['1.255', '3 decimals are too many: 2 at most here. 3 in stays in force.'],
    ['-5', '-5 is too small: the least here is 0. 3 in stays in force.'],
    ['250', '250 is too large: the most here is 100. 3 in stays in force.'],
  ])('%s, and tells why', async (text, reason) => {
    const given = setUp({ decimals: 2, min: 0, max: 100 });
    given.onCommit.mockClear();
    await given.user.click(given.field);
    await given.user.tripleClick(given.field);
    await given.user.paste(text);
    await given.user.tab();
    expect(given.field).toHaveValue(text);
    expect(given.field).toBeInvalid();
    expect(given.field).toHaveAccessibleDescription(`in ${reason}`);
    expect(given.onCommit).not.toHaveBeenCalled();
  });

  it('and calls a half-typed number wrong only when the field is left', async () => {
    const given = setUp({ value: null });
    await given.user.type(given.field, '-');
    expect(given.field).not.toHaveAttribute('aria-invalid');
    expect(given.field).toHaveAccessibleDescription('in Half-typed. Nothing is in force until then.');
    await given.user.tab();
    expect(given.field).toBeInvalid();
    expect(given.field).toHaveValue('-');
  });

  it('until Escape brings the last good value back', async () => {
    const given = setUp();
    await type(given, '7,');
    await given.user.keyboard('{Escape}');
    expect(given.field).toHaveValue('7');
    expect(given.field).not.toHaveAttribute('aria-invalid');
  });

  it('until the value is changed from outside', async () => {
    const given = setUp();
    await given.user.type(given.field, 'x');
    await given.user.click(screen.getByRole('button', { name: 'Back to 8' }));
    expect(given.field).toHaveValue('8');
  });
});

describe('NumberField at rest', () => {
  it('writes the number in full when the field is left', async () => {
    const given = setUp({ minDecimals: 2 });
    await type(given, '1234.5');
    expect(given.field).toHaveValue('1234.5');
    await given.user.tab();
    expect(given.field).toHaveValue('1,234.50');
  });

  it('writes it in full on Enter too, and tells that the typing is over', async () => {
    const onRest = vi.fn();
    const given = setUp({ minDecimals: 2, onRest });
    await type(given, '4{Enter}');
    expect(given.field).toHaveValue('4.00');
    expect(onRest).toHaveBeenCalledTimes(1);
  });

  it('is described by its unit, its hint and a finding about its value', () => {
    const given = setUp({ hint: 'Across the chest', issue: 'Too wide for the sheet.' });
    expect(given.field).toBeInvalid();
    expect(given.field).toHaveAccessibleDescription('in Across the chest Too wide for the sheet.');
  });

  it('asks a phone for the keys it needs: digits, a decimal mark, or a minus', () => {
    expect(setUp({ decimals: 0, min: 0 }).field).toHaveAttribute('inputmode', 'numeric');
    cleanup();
    expect(setUp({ min: 0 }).field).toHaveAttribute('inputmode', 'decimal');
    cleanup();
    expect(setUp().field).toHaveAttribute('inputmode', 'text');
  });

  it('says in words where the value comes from', () => {
    setUp({ origin: 'typical' });
    expect(screen.getByText('typical')).toBeVisible();
  });
});
