// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useMemo } from 'react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { saveBytes } from '@/app/_files/saveBytes';
import { handedOut } from '@/app/_order/bench/handedOut';
import { orderStudies, studies } from '@/app/_studies/studies';
import type { StudyAsk } from '@/app/_studies/useStudies';
import { wantedDayWords } from '@/app/_words/docket/jobWords';
import { exampleWorkshop } from '@/lib/examples/exampleWorkshop';
import type { QuoteAsked } from '@/lib/quotes/quoteAsked';
import { addDays, addWorkingDays, isWorkingDay, weekdayOf } from '@/shared/days';
import type { Job } from '@/shared/schemas/job';
import type { Workshop } from '@/shared/schemas/workshop';
import { clearScreens, screenStore } from '@/tests/app/_screens/screens';
import { grid } from '@/tests/fixtures/costed';
import { clubQuote } from '@/tests/fixtures/orderPapers';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import {
  accepted,
  approve,
  change,
  dayIn,
  enterOrder,
  ORDER,
  order,
  pay,
  quote,
  said,
  section,
  tell,
} from './inOrder';

vi.mock('next/navigation', () => ({
  usePathname: () => '/orders/club-enquiry',
  useRouter: () => ({ push: () => undefined }),
}));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('@/tests/app/_screens/screens');
  return { appDocuments };
});
vi.mock('@/app/_files/saveBytes', () => ({ saveBytes: vi.fn() }));
/* What a job takes is answered at once, by the same function that the worker runs. */
vi.mock('@/app/_studies/useStudies', () => ({
  useStudies: (name: string, asks: readonly StudyAsk<'bench'>[]) =>
    useMemo(
      () =>
        new Map(
          name === 'bench'
            ? asks.map((ask) => [ask.key, { ask, answer: studies.bench(ask.input, grid), failure: null }])
            : [],
        ),
      [name, asks],
    ),
}));

/* So is what is charged for haste. */
vi.mock('@/app/_studies/useOrderStudy', () => ({
  useOrderStudy: (name: string, asked: QuoteAsked | null, question: number) =>
    useMemo(
      () => ({
        newest:
          name === 'rush' && asked !== null
            ? { asked, question, answer: orderStudies.rush(asked, grid, question) }
            : null,
        failure: null,
      }),
      [name, asked, question],
    ),
}));

beforeEach(() => vi.mocked(saveBytes).mockClear());
afterEach(() => {
  cleanup();
  clearScreens();
});

const bench = () => section('Bench time');
const setWorkshop = (to: Partial<Workshop>) =>
  act(() => {
    screenStore().actions.edit('Workshop', [
      {
        do: 'change',
        kind: 'workshop',
        id: 'workshop',
        to: (now: Workshop): Workshop => ({ ...now, ...to }),
      },
    ]);
  });
const savedFile = () => new TextDecoder().decode(vi.mocked(saveBytes).mock.lastCall?.[1]);

/*
 * By hand: 52.9 min of printing, 223 at the press, 44.4 of folding, 12 of packing, 30 on the way: 362.3, which is 6 h 2.
 * Blanks are here on the fourth working day after the one on which they are ordered, the next one on a weekend: by
 * Wednesday the 25th on Tuesday the 1st. The first Saturday after, the 5th, holds the press and 17 min of folding; the
 * rest of it and packing go into Monday's hour, the way into Tuesday's.
 */
const here = addWorkingDays(isWorkingDay(TEST_DAY) ? TEST_DAY : addWorkingDays(TEST_DAY, 1), 4);
const saturday = addDays(here, 5 - weekdayOf(here));
const done = addDays(saturday, 3);
const saidAtLength = (day: string) => wantedDayWords(day, TEST_DAY, exampleWorkshop(TEST_DAY).locale);

describe('bench time of an order', () => {
  it('says how long it takes and when it is done', async () => {
    await enterOrder();
    expect(bench().getByText('6 h 2 min,')).toBeVisible();
    // 352.3 min of the hands for 37 shirts.
    expect(bench().getByText('Your hands set the pace: 9.5 min a piece.')).toBeVisible();
    expect(bench().getByText(new RegExp(`done by ${saidAtLength(done)}`))).toBeVisible();
  });

  it('draws the days with what is free and what this order takes', async () => {
    await enterOrder();
    const days = bench()
      .getAllByRole('listitem')
      .map(({ textContent }) => textContent ?? '');
    expect(days.some((day) => day.includes(`${said(saturday)}: 4 h free, 4 h for this order`))).toBe(true);
  });

  it('tells the last days on which it can still be kept', async () => {
    await enterOrder();
    expect(bench().getByText(/^Order the blanks by /)).toBeVisible();
    expect(bench().getByText(/^Approval and deposit by /)).toBeVisible();
    expect(bench().getByText(/^Print by /)).toBeVisible();
  });

  it('drops each last day once it was kept: approval and deposit, blanks, prints', async () => {
    await enterOrder();
    approve(true);
    await accepted();
    expect(bench().getByText(/^Approval and deposit by /)).toBeVisible();
    pay(38066);
    expect(bench().queryByText(/^Approval and deposit/)).toBeNull();
    expect(bench().getByText(/^Order the blanks by /)).toBeVisible();
    tell({ what: 'blanksOrdered', note: '' });
    expect(bench().queryByText(/^Order the blanks by /)).toBeNull();
    expect(bench().getByText(/^Print by /)).toBeVisible();
    tell({ what: 'printed', note: '' });
    expect(bench().queryByText(/^Print by /)).toBeNull();
  });

  it('says of an order on hold that it waits, not that all of it is done', async () => {
    await enterOrder();
    tell({ what: 'held', note: '' });
    expect(bench().getByText('On hold,')).toBeVisible();
    expect(bench().queryByText('Nothing left to do')).toBeNull();
    tell({ what: 'resumed', note: '' });
    expect(bench().getByText('6 h 2 min,')).toBeVisible();
  });

  it('tells the same last day to print in the row that waits for it', async () => {
    await enterOrder();
    approve(true);
    await accepted();
    pay(38066);
    tell({ what: 'goodsIn', note: '' });
    const by =
      bench()
        .getByText(/^Print by /)
        .textContent?.match(/^Print by (.+)\.$/)?.[1] ?? 'no day';
    expect(section('What it waits for').getByText(`by ${by}`)).toBeVisible();
    // Nobody has said when the bench is free: only the day of the quote is known.
    setWorkshop({ blocks: null });
    expect(
      section('What it waits for').getByText(new RegExp(`^to be ready by ${said(dayIn(19))}, `)),
    ).toBeVisible();
  });

  it('tells the first honest day where the wanted one cannot be kept, and that no charge buys it', async () => {
    await enterOrder();
    change({ wantedOn: dayIn(5) });
    // Done on a Tuesday, a working day to spare: the Thursday.
    expect(
      bench().getByText(
        `${said(dayIn(5))} cannot be kept, with a working day to spare. The first day you can promise is ${saidAtLength(addDays(done, 2))}.`,
      ),
    ).toBeVisible();
    expect(bench().getByText(/no charge buys them/)).toBeVisible();
  });

  // Nine working days from now, of ten that are usual. The bench is free on its weekday alone, and on no such day
  // between the coming of the blanks and it: done on that day.
  const wantedSoon = addWorkingDays(TEST_DAY, 9);
  const wantIt = () => {
    setWorkshop({ blocks: [{ id: 'only', weekday: weekdayOf(wantedSoon), fromMinute: 540, minutes: 480 }] });
    change({ wantedOn: wantedSoon });
  };
  const haste =
    'Wanted in 9 working days instead of the usual 10: your charge for haste is 20 % of the price.';

  it('names the charge for haste where it is wanted sooner than usual and the hours are free', async () => {
    await enterOrder();
    wantIt();
    expect(bench().getByText(new RegExp(`done by ${saidAtLength(wantedSoon)}`))).toBeVisible();
    expect(bench().getByText(`${haste} Add it to the quote.`)).toBeVisible();
  });

  it('adds that charge to the quote with one press, and once', async () => {
    await enterOrder();
    wantIt();
    // A fifth of 711.50.
    await userEvent.click(bench().getByRole('button', { name: 'Charge 142.30 USD for haste' }));
    expect(order().charges).toEqual([{ id: expect.any(String), kind: 'rush', what: 'Rush', amount: 142.3 }]);
    expect(bench().getByText(`${haste} The quote has a charge for it.`)).toHaveFocus();
    expect(bench().queryByRole('button', { name: /for haste$/ })).toBeNull();
    change({ charges: [] });
    expect(bench().getByRole('button', { name: 'Charge 142.30 USD for haste' })).toBeVisible();
  });

  it('asks no charge for haste of what was accepted, though its day is near', async () => {
    await enterOrder();
    wantIt();
    await accepted();
    expect(bench().getByText(new RegExp(`done by ${saidAtLength(wantedSoon)}`))).toBeVisible();
    expect(bench().queryByText(/haste/)).toBeNull();
    change({ wantedOn: dayIn(5) });
    expect(bench().queryByText(/no charge buys them/)).toBeNull();
  });

  it('says that approval and deposit came too late, once their last day is past', async () => {
    await enterOrder();
    approve(false);
    await accepted();
    change({ wantedOn: dayIn(5) });
    expect(bench().getByText(/^Approval and deposit had to be there by/)).toBeVisible();
  });

  it('goes by the day its quote promised once that is accepted, however soon it had been wanted', async () => {
    await enterOrder();
    approve(false);
    const [wantedOn, ready] = [dayIn(5), addDays(done, 30)];
    change({ wantedOn });
    expect(bench().getByText(/cannot be kept, with a working day to spare/)).toBeVisible();
    const dates = { orderBlanksBy: null, approveBy: null, ready, leadDays: null };
    const paperId = await quote({ wantedOn, dates });
    tell({ what: 'accepted', paperId, alternativeId: null, by: 'Alex', how: 'message', proof: null });
    expect(bench().queryByText(/cannot be kept/)).toBeNull();
    expect(bench().queryByText(/had to be there by/)).toBeNull();
    await userEvent.click(bench().getByRole('button', { name: 'Calendar file' }));
    const day = ready.replaceAll('-', '');
    expect(savedFile()).toMatch(
      new RegExp(`UID:club-enquiry-wanted\\r\\n(?:.+\\r\\n)*?DTSTART;VALUE=DATE:${day}\\r\\n`),
    );
  });

  it('says that no day is known where nobody said when the bench is free', async () => {
    await enterOrder();
    setWorkshop({ blocks: null });
    expect(bench().getByText('No day is known:')).toBeVisible();
    expect(bench().queryByRole('button', { name: 'Calendar file' })).toBeNull();
  });

  it('tells heatings-up that no price holds where blocks are short', async () => {
    await enterOrder();
    const blocks = [0, 1, 2, 3, 4].map((weekday) => ({
      ...{ id: `b${weekday}`, weekday, fromMinute: 1080, minutes: 120 },
    }));
    setWorkshop({ blocks });
    expect(bench().getByText(/^The press is heated up \d+ times? more than the price counts/)).toBeVisible();
  });
});

describe('an order of which no time is known', () => {
  it('says that it has no job, or that its job stops', async () => {
    await enterOrder();
    change({ jobIds: [] });
    expect(bench().getByText('No job yet,')).toBeVisible();
    change({ jobIds: ['gone'] });
    expect(bench().getByText('Not known:')).toBeVisible();
  });

  it('takes what its quote reckoned with once it is accepted and its job stops', async () => {
    await enterOrder();
    const [jobId = ''] = order().jobIds;
    const work = { before: [{ what: 'print' as const, minutes: 90 }], press: null, after: [] };
    const paperId = await quote({
      owner: { ...clubQuote.owner, work: [{ jobId, alternativeId: null, work, lead: null }] },
    });
    tell({ what: 'accepted', paperId, alternativeId: null, by: 'Alex', how: 'message', proof: null });
    expect(bench().getByText('6 h 2 min,')).toBeVisible();
    act(() => {
      screenStore().actions.edit('Job', [
        {
          do: 'change',
          kind: 'job',
          id: jobId,
          to: (now: Job): Job => ({
            ...now,
            lines: now.lines.map((line) => ({ ...line, blankId: 'gone' })),
          }),
        },
      ]);
    });
    expect(bench().getByText('1 h 30 min,')).toBeVisible();
    expect(
      bench().getByText(
        'Counted as it was quoted, for it cannot be reckoned now: Ramblers Club shirts. Open the job; a stop may stand in it.',
      ),
    ).toBeVisible();
    // Of its job as it is nobody knows the pace.
    expect(bench().queryByText(/the pace/)).toBeNull();
  });

  it('has nothing left to do once it is lost', async () => {
    await enterOrder();
    tell({ what: 'lost', why: 'date', note: '' });
    expect(bench().getByText('Nothing left to do')).toBeVisible();
  });
});

describe('the calendar file', () => {
  const save = () => userEvent.click(bench().getByRole('button', { name: 'Calendar file' }));
  const off = () => bench().getByRole('button', { name: 'Calendar file that calls them off' });
  const idsIn = (file: string) => file.match(/^UID:.+/gm) ?? [];

  it('holds the last days as days and the press as hours', async () => {
    await enterOrder();
    await save();
    expect(vi.mocked(saveBytes).mock.lastCall?.[0]).toBe('Ramblers Club shirts.ics');
    const file = savedFile();
    expect(file).toContain('UID:club-enquiry-wanted\r\n');
    expect(file).toContain('UID:club-enquiry-press-1\r\n');
    expect(file).toMatch(/UID:club-enquiry-approve\r\n(?:.+\r\n)*?DTSTART;VALUE=DATE:\d{8}\r\n/);
    expect(screen.getByText(/^Saved\. Open it with your calendar/)).toBeVisible();
  });

  it('keeps the number of what stays, and raises that of what changed', async () => {
    const numberOf = (id: string) =>
      Number(new RegExp(`UID:club-enquiry-${id}\\r\\n.+\\r\\nSEQUENCE:(\\d+)`).exec(savedFile())?.[1]);
    await enterOrder();
    await save();
    const [wanted, press] = [numberOf('wanted'), numberOf('press-1')];
    await save();
    expect([numberOf('wanted'), numberOf('press-1')]).toEqual([wanted, press]);
    change({ wantedOn: addDays(order().wantedOn ?? '', 1) });
    await save();
    // The press goes on as it was planned: as early as it can.
    expect([numberOf('wanted'), numberOf('press-1')]).toEqual([wanted + 1, press]);
  });

  it('calls off what went out of an order that is cancelled', async () => {
    await enterOrder();
    await save();
    const ids = idsIn(savedFile());
    tell({ what: 'cancelled', note: '' });
    expect(bench().getByText(/^Your calendar may still hold days of this order/)).toBeVisible();
    await userEvent.click(off());
    expect(idsIn(savedFile())).toEqual(ids);
    expect(savedFile().match(/^STATUS:CANCELLED/gm)).toHaveLength(ids.length);
    expect(savedFile()).not.toContain('STATUS:CONFIRMED');
    expect(bench().getByText('Saved. Open it with your calendar, and they go from it.')).toBeVisible();
  });

  it('calls them off while the order is on hold, and brings them again when it goes on', async () => {
    await enterOrder();
    await save();
    const sequences = () => [...savedFile().matchAll(/^SEQUENCE:(\d+)/gm)].map(([, found]) => Number(found));
    const first = sequences();
    tell({ what: 'held', note: '' });
    await userEvent.click(off());
    tell({ what: 'resumed', note: '' });
    await save();
    expect(savedFile()).not.toContain('STATUS:CANCELLED');
    // Once called off, once back.
    expect(sequences()).toEqual(first.map((one) => one + 2));
  });

  it('calls them off where the order is wanted on no day any more', async () => {
    await enterOrder();
    await save();
    change({ wantedOn: null });
    // Its job has a day as well, which is the order's then.
    expect(bench().getByRole('button', { name: 'Calendar file' })).toBeVisible();
    const [jobId = ''] = order().jobIds;
    act(() => {
      screenStore().actions.edit('Job', [
        { do: 'change', kind: 'job', id: jobId, to: (now: Job): Job => ({ ...now, wantedOn: null }) },
      ]);
    });
    await userEvent.click(off());
    expect(savedFile()).toMatch(/UID:club-enquiry-wanted\r\n(?:.+\r\n)*?STATUS:CANCELLED/);
  });

  it('is not there of an order that is over where none went out, or where all of it is past', async () => {
    await enterOrder();
    tell({ what: 'cancelled', note: '' });
    expect(bench().queryByRole('button')).toBeNull();
    act(() =>
      handedOut.remember(ORDER, [
        {
          ...{ id: `${ORDER}-wanted`, sequence: 0, title: 'Wanted', details: '', isCancelled: false },
          when: { kind: 'days', from: dayIn(-1), to: dayIn(-1) },
        },
      ]),
    );
    change({ note: 'Looked at again.' });
    expect(bench().queryByRole('button')).toBeNull();
  });

  it('leaves them in the calendar while its days are only not known', async () => {
    await enterOrder();
    await save();
    setWorkshop({ blocks: null });
    expect(bench().queryByRole('button')).toBeNull();
    change({ jobIds: ['gone'] });
    expect(bench().queryByRole('button')).toBeNull();
  });
});
