// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { CheckField } from '@/app/_fields/CheckField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { QuantityField } from '@/app/_fields/QuantityField';
import { QuantityRow } from '@/app/_fields/QuantityRow';
import { TextField } from '@/app/_fields/TextField';

afterEach(cleanup);

function Owner({ onCommit }: Readonly<{ onCommit: (value: number | null) => void }>) {
  const [value, setValue] = useState<number | null>(11);
  const commit = (next: number | null) => {
    onCommit(next);
    setValue(next);
  };
  return (
    <QuantityRow label="How many of each size" total={11}>
      <QuantityField label="L" value={value} onCommit={commit} />
    </QuantityRow>
  );
}

describe('QuantityField', () => {
  function setUp() {
    const onCommit = vi.fn();
    render(<Owner onCommit={onCommit} />);
    return { field: screen.getByRole('textbox', { name: 'L' }), onCommit, user: userEvent.setup() };
  }

  it.each([
    ['2.5', 'L: Only whole numbers go here. 11 stays in force.'],
    ['-3', 'L: -3 is too small: the least here is 0. 11 stays in force.'],
    ['many', 'L: “many” is no part of a number. 11 stays in force.'],
  ])('keeps "%s" as typed and tells why under the row', async (text, reason) => {
    const { field, onCommit, user } = setUp();
    await user.tripleClick(field);
    await user.paste(text);
    expect(field).toHaveValue(text);
    expect(field).toHaveAccessibleDescription(reason);
    expect(onCommit).not.toHaveBeenCalled();
  });

  it('takes 0, as what that means is for the check to say', async () => {
    const { field, onCommit, user } = setUp();
    await user.tripleClick(field);
    await user.paste('0');
    expect(onCommit).toHaveBeenCalledExactlyOnceWith(0);
    expect(field).not.toHaveAttribute('aria-invalid');
  });

  it('stands in a group with a name, and the sum after it', () => {
    setUp();
    expect(screen.getByRole('group', { name: 'How many of each size' })).toContainElement(
      screen.getByRole('status'),
    );
    expect(screen.getByRole('status')).toHaveTextContent('= 11');
  });
});

describe('TextField', () => {
  it('commits every key', async () => {
    const onCommit = vi.fn();
    render(<TextField label="Name" value="" onCommit={onCommit} />);
    await userEvent.type(screen.getByRole('textbox', { name: 'Name' }), 'a');
    expect(onCommit).toHaveBeenCalledExactlyOnceWith('a');
  });

  it('tells that a text is too long instead of cutting it', () => {
    render(<TextField label="Name" value="Ramblers" longest={5} onCommit={() => {}} />);
    expect(screen.getByRole('textbox')).toHaveValue('Ramblers');
    expect(screen.getByRole('textbox')).toHaveAccessibleDescription('3 letters too long: 5 fit here.');
  });
});

function Trimming() {
  const [value, setValue] = useState('Club');
  return <TextField label="Name" value={value} needed onCommit={(typed) => setValue(typed.trim())} />;
}

describe('TextField in a document that trims its names', () => {
  it('keeps a space between two words while the second is still to come', async () => {
    render(<Trimming />);
    const field = screen.getByRole('textbox', { name: 'Name' });
    await userEvent.type(field, ' order');
    expect(field).toHaveValue('Club order');
  });

  it('keeps an emptied name as it was, and says so', async () => {
    render(<Trimming />);
    const field = screen.getByRole('textbox', { name: 'Name' });
    await userEvent.clear(field);
    expect(field).toHaveValue('');
    expect(field).toHaveAccessibleDescription('Something has to stand here. “Club” stays in force.');
  });
});

describe('ChoiceField', () => {
  const choices = [
    { value: 'shirt', label: 'White shirt' },
    { value: 'mug', label: 'Mug' },
  ] as const;

  it('commits what was chosen', async () => {
    const onCommit = vi.fn();
    render(<ChoiceField label="Blank" value="shirt" choices={choices} onCommit={onCommit} />);
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Blank' }), 'Mug');
    expect(onCommit).toHaveBeenCalledExactlyOnceWith('mug');
  });

  it('shows that nothing is chosen rather than the first choice', () => {
    render(<ChoiceField label="Blank" value={null} choices={choices} onCommit={() => {}} />);
    expect(screen.getByRole('combobox')).toHaveDisplayValue('Choose');
  });
});

describe('CheckField', () => {
  it('commits yes and no, and is described by its hint', async () => {
    const onCommit = vi.fn();
    render(<CheckField label="Press pillow" checked={false} hint="Clear of the seams" onCommit={onCommit} />);
    const box = screen.getByRole('checkbox', { name: 'Press pillow' });
    await userEvent.click(box);
    expect(onCommit).toHaveBeenCalledExactlyOnceWith(true);
    expect(box).toHaveAccessibleDescription('Clear of the seams');
  });
});
