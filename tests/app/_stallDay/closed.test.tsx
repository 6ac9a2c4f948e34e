// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import './stallStage';
import { act, cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { StallDayScreen } from '@/app/_stallDay/StallDayScreen';
import { SPRING_FAIR_ID } from '@/lib/examples/springFair';
import { springFairTap } from '@/lib/examples/springFairCount';
import { closeFair } from '@/tests/app/_screens/closeFair';
import { bodyOf, enter, idsOf, screenStore, undo } from '@/tests/app/_screens/screens';
import { push } from './stallStage';

async function closedFair(note = ''): Promise<void> {
  await closeFair('dry', note);
  await enter(<StallDayScreen stallDayId={SPRING_FAIR_ID} />);
  await screen.findByRole('region', { name: 'What came of it' });
}
const part = (name: string) => within(screen.getByRole('region', { name }));

describe('a closed day', () => {
  it('tells what came of it beside the plan that was fixed, whatever is changed after', async () => {
    await closedFair();
    const rows = () => part('The plan it went by').getAllByRole('row').slice(1);
    const told = () => rows().map(({ textContent }) => textContent);
    expect(part('What came of it').getByText('483.95')).toBeVisible();
    expect(part('What came of it').getByText('profit; the plan had 543.25 when it is dry')).toBeVisible();
    // (483.95 + 24.17 × 18) ÷ 24.17 is 38.02.
    expect(part('What came of it').getByText('38')).toBeVisible();
    expect(part('What came of it').getByText('Go again')).toBeVisible();
    expect(part('What came of it').getByText(/taken, 70 of 132 sold$/)).toHaveTextContent('1,723.00');
    expect(part('The plan it went by').getByText('337.25')).toBeVisible();
    expect(told()).toEqual(['dry73543.2540.48', 'showers4992.9621.85', 'wet23-391.001.82'.replace('-', '−')]);
    const before = told();
    await act(async () => {
      screenStore().actions.edit('Change', [
        {
          do: 'change',
          kind: 'stallDay',
          id: SPRING_FAIR_ID,
          to: (now) => ({ ...now, ranges: [], held: [] }),
        },
      ]);
    });
    expect(told()).toEqual(before);
    expect(part('What came of it').getByText('483.95')).toBeVisible();
  });

  it('tells taps that came after the close', async () => {
    const planId = await closeFair('dry');
    await enter(<StallDayScreen stallDayId={SPRING_FAIR_ID} />);
    await screen.findByRole('region', { name: 'What came of it' });
    expect(screen.queryByText(/after the close/)).toBeNull();
    const body = springFairTap(planId, { minute: 0, tap: { what: 'visitors', count: 10 } });
    await act(async () => {
      screenStore().actions.note('Tap', [{ kind: 'stallTap', body }]);
    });
    expect(screen.getByText(/^One tap came after the close, so its sums/)).toBeVisible();
  });

  it('has nothing left to press, fix or count', async () => {
    await closedFair();
    for (const name of [/^Fix/, /^Put them into the jobs/, /^Take/])
      expect(screen.queryByRole('button', { name })).toBeNull();
    expect(screen.queryByRole('link', { name: /^Count sales/ })).toBeNull();
    expect(screen.queryByText(/Order the blanks/)).toBeNull();
    expect(screen.getByRole('link', { name: 'See the evening' })).toHaveAttribute(
      'href',
      `/stall/${SPRING_FAIR_ID}/evening`,
    );
  });

  it('leads to the next one like it, with its goods and nothing paid', async () => {
    await closedFair();
    await userEvent.click(screen.getByRole('button', { name: 'Plan the next one like it' }));
    const id = idsOf('stallDay').find((one) => one !== SPRING_FAIR_ID) ?? '';
    const next = bodyOf('stallDay', id);
    expect(push).toHaveBeenCalledWith(`/stall/${id}`);
    expect(next).toMatchObject({ name: 'Exampleton Spring Fair', stage: 'idea', days: [], held: [] });
    expect(next.ranges).toEqual(bodyOf('stallDay', SPRING_FAIR_ID).ranges);
    expect(next.costs.every(({ paidOn }) => paidOn === null)).toBe(true);
  });

  it('says what was noted for next time, and so do the plan of the next one and the size it names', async () => {
    await closedFair('Bring the long table.\nOtter L, 9 next time for 7.');
    const lines = (name: string) =>
      part(name)
        .getAllByRole('listitem')
        .map(({ textContent }) => textContent);
    const noted = ['Bring the long table.', 'Otter L, 9 next time for 7.', 'youth sizes, asked for 6 times'];
    // The lesson that the note bears already is not told twice.
    expect(lines('Noted for next time')).toEqual(noted);
    await userEvent.click(part('Noted for next time').getByRole('button', { name: '1 more' }));
    expect(lines('Noted for next time')).toEqual([...noted, 'black shirt, asked for 4 times']);
    await userEvent.click(screen.getByRole('button', { name: 'Plan the next one like it' }));
    const id = idsOf('stallDay').find((one) => one !== SPRING_FAIR_ID) ?? '';
    expect(bodyOf('stallDay', id).note).toBe('');
    cleanup();
    await act(async () => {
      const saturday = bodyOf('stallDay', SPRING_FAIR_ID).days;
      screenStore().actions.edit('Set the day', [
        { do: 'change', kind: 'stallDay', id, to: (now) => ({ ...now, days: saturday }) },
      ]);
    });
    await enter(<StallDayScreen stallDayId={id} />);
    const head = await screen.findByRole('region', { name: /^Noted at Exampleton Spring Fair, / });
    expect(
      within(head)
        .getAllByRole('listitem')
        .map(({ textContent }) => textContent),
    ).toEqual(noted);
    expect(within(head).getByRole('link', { name: 'See that day' })).toHaveAttribute(
      'href',
      `/stall/${SPRING_FAIR_ID}`,
    );
    await screen.findByText('Otter', { selector: 'legend' });
    const otter = within(screen.getByRole('group', { name: 'Otter' }));
    expect(otter.getByRole('textbox', { name: 'L' })).toHaveAccessibleDescription(/, 9 noted$/);
    expect(otter.getByRole('textbox', { name: 'M' })).not.toHaveAccessibleDescription(/noted/);
  });

  it('is planned on once its close is undone', async () => {
    await closedFair();
    cleanup();
    await undo();
    await enter(<StallDayScreen stallDayId={SPRING_FAIR_ID} />);
    expect(screen.getByRole('region', { name: 'The plan in short' })).toBeVisible();
    const [count] = screen.getAllByRole('link', { name: 'Count sales' });
    expect(count).toBeVisible();
    expect(screen.queryByRole('region', { name: 'What came of it' })).toBeNull();
  });

  it('can be put away', async () => {
    await closedFair();
    await userEvent.click(screen.getByRole('button', { name: 'Note, put away, remove' }));
    await userEvent.click(await screen.findByRole('button', { name: 'Put it away' }));
    expect(bodyOf('stallDay', SPRING_FAIR_ID).archivedOn).not.toBeNull();
  });

  it('is removed and leaves its close, which what it booked and taught rests on', async () => {
    await closedFair();
    const { stockMove } = screenStore().getState().entries;
    await userEvent.click(screen.getByRole('button', { name: 'Note, put away, remove' }));
    const button = await screen.findByRole('button', { name: 'Remove this stall day' });
    expect(button).toHaveAccessibleDescription(/^If it is removed, its close stays/);
    await userEvent.click(button);
    expect(idsOf('stallDay')).not.toContain(SPRING_FAIR_ID);
    expect(screenStore().getState().papers.dayClose).toHaveLength(1);
    expect(screenStore().getState().entries.stockMove).toEqual(stockMove);
  });
});
