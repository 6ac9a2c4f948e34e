// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, configure, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, expect, it, vi } from 'vitest';
import { SheetChoices } from '@/app/_docket/sheets/SheetChoices';
import { TransferStatus } from '@/app/_docket/sheets/TransferStatus';
import type { TransferState } from '@/app/_docket/sheets/useWrittenFile';
import { formatterFor } from '@/app/_words/formatter';
import type { SheetChoice } from '@/lib/studies/sheets/compareSheets';
import { InJob, pricedNow } from '@/tests/app/_docket/inJob';
import { clearScreens, screenStore } from '@/tests/app/_screens/screens';
import { club } from '@/tests/fixtures/clubJob';

vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('@/tests/app/_screens/screens');
  return { appDocuments };
});

configure({ defaultHidden: true });
afterEach(() => {
  cleanup();
  clearScreens();
});

const input = club();
const { units } = input.workshop;

/** A file that is at something until it is stopped. */
function Stoppable({ from }: Readonly<{ from: TransferState }>) {
  const [state, setState] = useState(from);
  return (
    <TransferStatus
      {...{ state, formatter: formatterFor({ units, locale: 'en-US', currency: 'USD' }) }}
      onCancel={() => setState({ kind: 'cancelled', name: 'shirts.pdf' })}
    />
  );
}

it.each<TransferState>([
  { kind: 'writing', name: 'shirts.pdf', share: 0.5 },
  { kind: 'notStarted', name: 'shirts.pdf', isGone: false, again: () => undefined },
])('the focus goes to what is said of a file that is stopped while it is $kind', async (from) => {
  render(<Stoppable from={from} />);
  screen.getByRole('button', { name: 'Stop' }).focus();
  await userEvent.keyboard('{Enter}');
  expect(screen.getByText('“shirts.pdf” was stopped; nothing was saved.')).toHaveFocus();
});

it('the focus goes to the name of a paper that is chosen, and stays there when its button goes', async () => {
  await act(() => screenStore().open());
  const rowOf = (sheetId: string, isPresent: boolean): SheetChoice => ({
    kind: 'costed',
    sheetId,
    isPresent,
    sheets: 47,
    rollLengthMm: null,
    wasteShare: 0.5,
    fullCost: 120,
    costEach: 3,
  });
  const table = (present: string) => (
    <InJob input={input} priced={pricedNow(input)}>
      <SheetChoices choices={['one', 'two'].map((id) => rowOf(id, id === present))} stale={false} />
    </InJob>
  );
  const { rerender } = render(table('one'));
  screen.getByRole('button', { name: /^Use / }).focus();
  await userEvent.keyboard('{Enter}');
  const [, name] = screen.getAllByRole('rowheader');
  expect(name).toHaveFocus();
  rerender(table('two'));
  expect(name).toHaveFocus();
});
