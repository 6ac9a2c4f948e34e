// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, fireEvent, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { HoursSection } from '@/app/_workshop/hours/HoursSection';
import { workshopFields } from '@/app/_workshop/workshopFields';
import { usualBlocks } from '@/lib/calendar/usualBlocks';
import { TEST_DAY, TEST_YEAR } from '@/tests/tools/clock/testDay';
import { bodyOf, clearScreens, enter, screenStore, undo } from './screens';

vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('./screens');
  return { appDocuments };
});

afterEach(() => {
  cleanup();
  clearScreens();
});

async function open() {
  await enter(
    <WithWorkspace>
      {(workspace) => (
        <>
          <h1>Free blocks</h1>
          <HoursSection fields={workshopFields(workspace)} />
        </>
      )}
    </WithWorkspace>,
  );
  await screen.findByRole('button', { name: 'Add days off' }, { timeout: 20_000 });
}

const workshop = () => bodyOf('workshop', 'workshop');
const on = (day: RegExp) => within(screen.getByRole('region', { name: day }));
const type = (field: HTMLElement, value: string) => fireEvent.change(field, { target: { value } });

describe('the blocks of the week', () => {
  it('stand by weekday with their times and the hours they leave free', async () => {
    await open();
    const saturday = on(/^Saturday/);
    expect(saturday.getByLabelText('From')).toHaveValue('09:00');
    expect(saturday.getByLabelText('To')).toHaveValue('13:00');
    expect(saturday.getByRole('heading')).toHaveTextContent('4 h free');
    expect(on(/^Sunday/).getByRole('heading')).toHaveTextContent('not free');
  });

  it('end when a time is typed, past midnight into the next day, as one step', async () => {
    await open();
    const to = on(/^Monday/).getByLabelText('To');
    type(to, '20:00');
    type(to, '02:00');
    // 18:00 to 2:00 are 8 h.
    expect(workshop().blocks?.[0]).toMatchObject({ weekday: 0, fromMinute: 1080, minutes: 480 });
    expect(to).toHaveAccessibleDescription(/8 h, into Tuesday/);
    // Two of them are Tuesday's, beside its own hour.
    expect(on(/^Tuesday/).getByRole('heading')).toHaveTextContent('3 h free');
    fireEvent.blur(to);
    await undo();
    expect(workshop().blocks).toEqual(usualBlocks);
  });

  it('begin when a time is typed and keep their end', async () => {
    await open();
    type(on(/^Saturday/).getByLabelText('From'), '10:30');
    expect(workshop().blocks?.[5]).toMatchObject({ fromMinute: 630, minutes: 150 });
  });

  it('say so when a time is emptied, and keep the one before', async () => {
    await open();
    const from = on(/^Monday/).getByLabelText('From');
    type(from, '');
    expect(from).toHaveValue('');
    expect(from).toHaveAccessibleDescription(/A time has to stand here/);
    expect(workshop().blocks).toEqual(usualBlocks);
    type(from, '17:00');
    expect(from).toBeValid();
    expect(workshop().blocks?.[0]).toMatchObject({ fromMinute: 1020, minutes: 120 });
  });

  it('are added an hour after the last of the day by keyboard, which then stands in its first field', async () => {
    await open();
    screen.getByRole('button', { name: 'Add a block on Saturday' }).focus();
    await userEvent.keyboard('{Enter}');
    expect(workshop().blocks?.[6]).toMatchObject({ weekday: 5, fromMinute: 840, minutes: 60 });
    expect(on(/^Saturday/).getAllByLabelText('From')[1]).toHaveFocus();
    await userEvent.keyboard('{Shift>}{Tab}{/Shift}');
    await undo();
    expect(workshop().blocks).toEqual(usualBlocks);
  });

  it('that overlap are told of', async () => {
    await open();
    await userEvent.click(screen.getByRole('button', { name: 'Add a block on Saturday' }));
    const [first, second] = on(/^Saturday/).getAllByLabelText('From');
    if (first === undefined || second === undefined) throw new Error('no second block');
    expect(first).not.toHaveAccessibleDescription(/Overlaps/);
    type(second, '12:00');
    expect(first).toHaveAccessibleDescription(/Overlaps another block/);
    // 9:00 to 15:00.
    expect(on(/^Saturday/).getByRole('heading')).toHaveTextContent('6 h free');
  });

  it('are removed one by one, each a step that the note takes back', async () => {
    await open();
    await userEvent.click(screen.getByRole('button', { name: /^Remove Monday/ }));
    await userEvent.click(screen.getByRole('button', { name: /^Remove Tuesday/ }));
    expect(workshop().blocks?.map(({ weekday }) => weekday)).toEqual([2, 3, 4, 5]);
    const note = screen.getByText(/^“Tuesday .*” is removed/).closest('[role=status]');
    expect(note).toHaveFocus();
    await userEvent.click(screen.getByRole('button', { name: 'Bring it back' }));
    expect(workshop().blocks?.map(({ weekday }) => weekday)).toEqual([1, 2, 3, 4, 5]);
  });

  it('are copied to other days in place of what they had, as one step', async () => {
    await open();
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Copy the blocks of' }), 'Saturday');
    await userEvent.click(screen.getByRole('button', { name: 'Copy Saturday to Monday to Friday' }));
    const { blocks } = workshop();
    expect(blocks?.map(({ weekday }) => weekday).toSorted()).toEqual([0, 1, 2, 3, 4, 5]);
    expect(blocks?.every(({ fromMinute, minutes }) => fromMinute === 540 && minutes === 240)).toBe(true);
    expect(new Set(blocks?.map(({ id }) => id)).size).toBe(6);
    expect(screen.getByText('Monday to Friday is now as Saturday.')).toBeVisible();
    expect(screenStore().getState().undoLabel).toBe('Copy Saturday to Monday to Friday');
    await undo();
    expect(workshop().blocks).toEqual(usualBlocks);
  });

  it('end at forty, as many as the document holds', async () => {
    await open();
    const add = screen.getByRole('button', { name: 'Add a block on Sunday' });
    for (let count = usualBlocks.length; count < 40; count += 1) fireEvent.click(add);
    expect(workshop().blocks).toHaveLength(40);
    fireEvent.click(add);
    expect(workshop().blocks).toHaveLength(40);
    expect(add).toHaveAttribute('title', '40 is the most there can be.');
  });
});

describe('days off', () => {
  it('begin as today, take a last day and a word, and go again', async () => {
    const [from, to] = [`${TEST_YEAR + 1}-12-24`, `${TEST_YEAR + 2}-01-06`];
    await open();
    await userEvent.click(screen.getByRole('button', { name: 'Add days off' }));
    expect(workshop().daysOff).toMatchObject([{ from: TEST_DAY, to: TEST_DAY, what: '' }]);
    expect(screen.getByLabelText('First day')).toHaveFocus();
    type(screen.getByLabelText('First day'), from);
    const last = screen.getByLabelText('Last day');
    expect(last).toHaveAccessibleDescription(/comes before the first/);
    type(last, to);
    expect(last).not.toHaveAccessibleDescription(/comes before the first/);
    await userEvent.click(screen.getByRole('textbox', { name: 'What for' }));
    await userEvent.paste('Christmas');
    expect(workshop().daysOff).toMatchObject([{ from, to, what: 'Christmas' }]);
    await userEvent.click(
      screen.getByRole('button', {
        name: `Remove Christmas, Dec 24, ${TEST_YEAR + 1} to Jan 6, ${TEST_YEAR + 2}`,
      }),
    );
    expect(workshop().daysOff).toEqual([]);
    await undo();
    expect(workshop().daysOff).toHaveLength(1);
  });

  it('keep a day that is emptied, and say so', async () => {
    await open();
    await userEvent.click(screen.getByRole('button', { name: 'Add days off' }));
    const first = screen.getByLabelText('First day');
    type(first, '');
    expect(first).toHaveAccessibleDescription(/A day has to stand here/);
    expect(workshop().daysOff[0]?.from).toBe(TEST_DAY);
  });
});
