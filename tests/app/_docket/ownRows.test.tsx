// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, configure, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { AddOwnRow } from '@/app/_ownRows/AddOwnRow';
import { OwnRowList } from '@/app/_ownRows/OwnRowList';
import { ownRowId } from '@/app/_ownRows/ownRowId';
import { priceJob } from '@/lib/costing/priceJob';
import { type OwnRow, ownRowSchema } from '@/shared/schemas/ownRow';
import { setIn } from '@/shared/setIn';
import { clubWith } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';

// Nothing here is hidden; asking after every ancestor's style takes most of the time of a large table.
configure({ defaultHidden: true });
afterEach(cleanup);

describe('ownRowId', () => {
  it.each([
    ['Pattern fee', [], 'own_pattern_fee'],
    ['  Größe & Co. ', [], 'own_gro_e_co'],
    ['Café', [], 'own_cafe'],
    ['2 pins', [], 'own_pins'],
    ['針', [], 'own_row'],
    ['Pins', ['own_pins', 'own_pins_2'], 'own_pins_3'],
    ['A very long name of a row that goes on and on', [], 'own_a_very_long_name_of_a_row_th'],
  ])('makes of “%s” a name for formulas', (label, taken, id) => {
    expect(ownRowId(label, taken)).toBe(id);
    const row = { id, label, outOfPocket: true, cost: { kind: 'formula', formula: '0' } };
    expect(ownRowSchema.safeParse(row).success).toBe(true);
  });
});

const bad: OwnRow = {
  id: 'own_inks',
  label: 'Test inks',
  outOfPocket: true,
  cost: { kind: 'formula', formula: 'inkMl * 0,1' },
};

/** The list with a maker behind it: what is set is applied, and judged by the whole pricing. */
function TabState({ onRows = () => {} }: Readonly<{ onRows?: (rows: readonly OwnRow[]) => void }>) {
  const [ownRows, setRows] = useState<readonly OwnRow[]>([bad]);
  const { findings, costSheet } = priceJob(clubWith({ 'job.ownRows': ownRows }), grid);
  return (
    <OwnRowList
      of="job"
      rows={ownRows}
      everyRow={ownRows}
      placements={2}
      findings={findings}
      sheet={costSheet}
      onSet={(_, path, value) => {
        const next = setIn({ ownRows }, path, value).ownRows;
        setRows(next);
        onRows(next);
      }}
      onRemove={({ id }) => setRows(ownRows.filter((row) => row.id !== id))}
    />
  );
}

const formulaField = () => screen.getByRole('textbox', { name: 'Cost of one good piece, as a formula' });

describe('an own row by a formula', () => {
  it('keeps a bad formula as typed and marks the place of its error', async () => {
    const user = userEvent.setup();
    const { container } = render(<TabState />);
    await user.click(screen.getByText('Test inks'));
    expect(formulaField()).toHaveValue('inkMl * 0,1');
    expect(formulaField()).toHaveAccessibleDescription(/At character 9, write 0.1 instead of 0,1/);
    expect(container.querySelector('mark')).toHaveTextContent('0,1');
    expect(screen.getByText(/can’t be worked out/)).toBeInTheDocument();
  });

  it('with a decimal comma is written with a point at a touch, and never as five', async () => {
    const user = userEvent.setup();
    const onRows = vi.fn();
    render(<TabState onRows={onRows} />);
    await user.click(screen.getByText('Test inks'));
    await user.click(screen.getByRole('button', { name: 'Write decimals with a point' }));
    expect(formulaField()).toHaveValue('inkMl * 0.1');
    expect(onRows).toHaveBeenLastCalledWith([{ ...bad, cost: { kind: 'formula', formula: 'inkMl * 0.1' } }]);
  });

  it('is judged when the typing rests, and then says what it adds', async () => {
    const user = userEvent.setup();
    render(<TabState />);
    await user.click(screen.getByText('Test inks'));
    await user.clear(formulaField());
    await user.type(formulaField(), '1 +');
    expect(formulaField()).not.toHaveAccessibleDescription(/cannot be read/);
    await user.type(formulaField(), ' 1');
    await user.tab();
    expect(formulaField()).not.toHaveAccessibleDescription();
    expect(screen.getByText(/adds 74.00/)).toBeInTheDocument();
  });

  it('takes a name from the list into the formula, at the caret', async () => {
    const user = userEvent.setup();
    const onRows = vi.fn();
    render(<TabState onRows={onRows} />);
    await user.click(screen.getByText('Test inks'));
    await user.clear(formulaField());
    await user.type(formulaField(), '2 * ');
    await user.click(screen.getByText('Names and functions for a formula'));
    await user.type(screen.getByRole('textbox', { name: 'Find a name' }), 'your pay');
    await user.click(screen.getByRole('button', { name: /^wage/ }));
    expect(formulaField()).toHaveValue('2 * wage');
    expect(onRows).toHaveBeenLastCalledWith([{ ...bad, cost: { kind: 'formula', formula: '2 * wage' } }]);
  });

  it('goes when it is removed', async () => {
    const user = userEvent.setup();
    render(<TabState />);
    await user.click(screen.getByText('Test inks'));
    await user.click(screen.getByRole('button', { name: 'Remove this row' }));
    expect(screen.queryByText('Test inks')).not.toBeInTheDocument();
  });
});

describe('adding a row', () => {
  it('wants a name first, then makes a row that is the maker’s own of today', async () => {
    const user = userEvent.setup();
    const onAdd = vi.fn();
    render(<AddOwnRow taken={['own_pattern_fee']} onAdd={onAdd} />);
    await user.click(screen.getByRole('button', { name: 'Add a row' }));
    const name = screen.getByRole('textbox', { name: 'Name of the row' });
    expect(name).toHaveFocus();
    await user.click(screen.getByRole('button', { name: 'Add it' }));
    expect(onAdd).not.toHaveBeenCalled();
    await user.type(name, 'Pattern fee');
    await user.type(screen.getByRole('textbox', { name: 'Amount' }), '12.5');
    await user.selectOptions(screen.getByRole('combobox', { name: 'It costs' }), 'each design');
    await user.click(screen.getByRole('button', { name: 'Add it' }));
    expect(onAdd).toHaveBeenCalledExactlyOnceWith(
      {
        id: 'own_pattern_fee_2',
        label: 'Pattern fee',
        outOfPocket: true,
        cost: {
          kind: 'driver',
          driver: 'design',
          amount: {
            value: 12.5,
            unit: 'money',
            date: expect.stringMatching(/^\d{4}-\d{2}-\d{2}$/),
            origin: 'yours',
          },
        },
      },
      'job',
    );
    expect(screen.getByRole('button', { name: 'Add a row' })).toHaveFocus();
  });

  it('keeps the form open over a formula that cannot be read, with the place of its error and the names', async () => {
    const user = userEvent.setup();
    const onAdd = vi.fn();
    const { container } = render(
      <AddOwnRow taken={[bad.id]} everyRow={[bad]} placements={1} onAdd={onAdd} />,
    );
    await user.click(screen.getByRole('button', { name: 'Add a row' }));
    await user.type(screen.getByRole('textbox', { name: 'Name of the row' }), 'Pins');
    await user.selectOptions(screen.getByRole('combobox', { name: 'It costs' }), 'by a formula');
    expect(screen.getByText('Names and functions for a formula')).toBeInTheDocument();
    await user.type(formulaField(), 'inkMl * 0,2');
    await user.click(screen.getByRole('button', { name: 'Add it' }));
    expect(onAdd).not.toHaveBeenCalled();
    expect(formulaField()).toHaveValue('inkMl * 0,2');
    expect(container.querySelector('mark')).toHaveTextContent(',');
    await user.clear(formulaField());
    await user.type(formulaField(), 'inkMl * 0.2');
    await user.click(screen.getByRole('button', { name: 'Add it' }));
    expect(onAdd).toHaveBeenCalledOnce();
  });
});
