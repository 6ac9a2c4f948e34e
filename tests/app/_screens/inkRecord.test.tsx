// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, fireEvent, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { WORKSHOP_ID } from '@/app/_documents/documentsByKind';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { workshopFields } from '@/app/_workshop/workshopFields';
import { workshopSections } from '@/app/_workshop/workshopSections';
import { inkRecordOf } from '@/lib/ink/record/inkRecordOf';
import type { InkPrints, InkRefill } from '@/shared/schemas/entries';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { eventually } from '@/tests/tools/eventually';
import { bodyOf, clearScreens, enter, leaveScreens, screenStore, undo } from './screens';

vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('./screens');
  return { appDocuments };
});

afterEach(() => {
  cleanup();
  clearScreens();
});

const workshop = () => bodyOf('workshop', WORKSHOP_ID);
const record = () => inkRecordOf(screenStore().getState().entries);

interface Noted {
  readonly refills: readonly InkRefill[];
  readonly runs: readonly InkPrints[];
}

async function enterInk() {
  await enter(
    <WithWorkspace>
      {(workspace) => (
        <>
          <h1>Ink</h1>
          {workshopSections.find(({ id }) => id === 'ink')?.body(workshopFields(workspace))}
        </>
      )}
    </WithWorkspace>,
  );
  // The record is fetched behind the rest.
  await screen.findByRole('button', { name: /^Note prints by hand/ }, { timeout: 20_000 });
}

async function open(name: RegExp) {
  await userEvent.click(screen.getByRole('button', { name }));
}

/** 0.0065 mL/in² at 10 % loss and 4 mL a session: 160 prints of 100 in² take 114.4, 80 take 57.2, 40 take 28.6. */
const measured: Noted = {
  refills: [
    { day: '2026-01-01', mL: 30 },
    { day: '2026-02-01', mL: 114.4 + 8 },
    { day: '2026-03-01', mL: 57.2 + 24 },
    { day: '2026-04-01', mL: 28.6 + 4 },
  ],
  runs: [
    ['2026-01-10', 160, 2],
    ['2026-02-10', 80, 6],
    ['2026-03-10', 40, 1],
  ].map(([day, prints, sessions]) => ({
    day: String(day),
    name: 'Prints',
    prints: Number(prints),
    total: 1,
    widthMm: 254,
    heightMm: 254,
    sessions: Number(sessions),
    jobId: null,
  })),
};

async function withRecord({ refills, runs }: Noted) {
  await enterInk();
  await act(async () => {
    screenStore().actions.note('A record', [
      ...refills.map((body) => ({ kind: 'inkRefill', body }) as const),
      ...runs.map((body) => ({ kind: 'inkPrints', body }) as const),
    ]);
  });
}

describe('the ink record', () => {
  it('takes a refill and prints, each as one step that undo names', async () => {
    await enterInk();
    await open(/^Note a refill/);
    const refill = screen.getByRole('form', { name: 'A refill' });
    await userEvent.type(within(refill).getByRole('textbox', { name: 'Poured in, all colours' }), '62.5');
    await userEvent.click(within(refill).getByRole('button', { name: 'Note the refill' }));
    expect(record().refills).toMatchObject([{ day: TEST_DAY, mL: 62.5 }]);
    expect(screenStore().getState().undoLabel).toMatch(/^Refill of /);

    await open(/^Note prints by hand/);
    const prints = screen.getByRole('form', { name: 'Prints' });
    const fill = (name: string, text: string) =>
      userEvent.type(within(prints).getByRole('textbox', { name }), text);
    await fill('What was printed', 'Test strips');
    await fill('Prints', '12');
    await fill('Ink, all channels', '140');
    await fill('Width', '3.5');
    await fill('Height', '3.5');
    await userEvent.click(within(prints).getByRole('button', { name: 'Note the prints' }));
    expect(record().runs).toMatchObject([
      { name: 'Test strips', prints: 12, total: 1.4, widthMm: 88.9, heightMm: 88.9, sessions: 1 },
    ]);
    expect(screen.getByText(/12 prints, 3\.5 × 3\.5 in, 140 % of ink, 1 session/)).toBeVisible();
    await undo();
    expect(record().runs).toEqual([]);
  });

  it.each([
    ['Poured in, all colours', '-5', /less than|more than|above/i],
    ['Poured in, all colours', '0', /more than|above/i],
    ['Poured in, all colours', '1,5', /decimal|comma|point/i],
    ['Poured in, all colours', 'two', /number/i],
  ])('refuses %s of “%s” in a sentence, and keeps what was typed', async (name, typed, told) => {
    await enterInk();
    await open(/^Note a refill/);
    const field = screen.getByRole('textbox', { name });
    await userEvent.type(field, typed);
    await userEvent.tab();
    expect(field).toHaveValue(typed);
    expect(field).toHaveAccessibleDescription(told);
    await userEvent.click(screen.getByRole('button', { name: 'Note the refill' }));
    expect(record().refills).toEqual([]);
  });

  it('asks about five litres where fifty millilitres were meant, and takes no day to come', async () => {
    await enterInk();
    await open(/^Note a refill/);
    const field = screen.getByRole('textbox', { name: 'Poured in, all colours' });
    await userEvent.type(field, '5000');
    expect(field).toHaveAccessibleDescription(/More than the tanks of a desktop printer hold/);
    const day = screen.getByLabelText('On');
    fireEvent.change(day, { target: { value: '2099-01-01' } });
    expect(day).toHaveAccessibleDescription(/still to come/);
    await userEvent.click(screen.getByRole('button', { name: 'Note the refill' }));
    expect(record().refills).toEqual([]);
  });

  it('takes no coverage over four channels, and says of prints without a refill that they do not count', async () => {
    await withRecord({ refills: [], runs: measured.runs.slice(0, 1) });
    expect(await screen.findByText(/160 prints noted up to the first refill do not count/)).toBeVisible();
    expect(screen.queryByText(/since the last refill/)).not.toBeInTheDocument();
    await open(/^Note prints by hand/);
    const ink = screen.getByRole('textbox', { name: 'Ink, all channels' });
    await userEvent.type(ink, '401');
    await userEvent.tab();
    expect(ink).toHaveValue('401');
    expect(ink).toHaveAccessibleDescription(/400/);
    await userEvent.click(screen.getByRole('button', { name: 'Note the prints' }));
    expect(record().runs).toHaveLength(1);
  });

  it('turns typical into measured by one press, with the number of prints, and undo brings typical back', async () => {
    await withRecord(measured);
    expect(await screen.findByText(/280 prints between refills took 236\.2 mL/)).toBeVisible();
    expect(screen.getByText(/A session takes 4 mL for cleaning/)).toBeVisible();
    // 9 sessions of 4 mL are 36 of 236.2 mL.
    expect(screen.getByText(/^15\.2 % of the ink went into cleaning/)).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: 'Use the measured figures' }));
    expect(workshop().rates.laydown).toMatchObject({ origin: 'measured', count: 280, date: TEST_DAY });
    expect(workshop().rates.laydown?.value).toBeCloseTo(0.0065, 9);
    expect(workshop().rates.sessionInk).toMatchObject({ origin: 'measured', count: 3 });
    expect(screen.getByText('measured 280×')).toBeVisible();
    expect(screen.getByText('These figures are in force.')).toBeVisible();
    await undo();
    expect(workshop().rates.laydown?.origin).not.toBe('measured');
  });

  it('speaks of laydown and of a session in the units the maker types them in', async () => {
    await withRecord(measured);
    await act(async () => {
      await screenStore().actions.edit('Units', [
        {
          do: 'change',
          kind: 'workshop',
          id: WORKSHOP_ID,
          to: (now) => ({
            ...now,
            units: { ...now.units, volume: 'floz' },
            rates: {
              ...now.rates,
              laydown: { value: 10, unit: 'mL/m2', date: '2026-01-01', origin: 'yours' },
            },
          }),
        },
      ]);
    });
    // 0.0065 ÷ 0.00064516 m² are 10.075 mL/m²; 4 ÷ 29.5735 are 0.135 fl oz. Without scatter a range is a point.
    expect(
      await screen.findByText(/lays down 10\.08 mL\/m², most likely between 10\.08 and 10\.08\./),
    ).toBeVisible();
    expect(
      screen.getByText(
        /A session takes 0\.14 fl oz for cleaning, most likely between 0\.14 fl oz and 0\.14 fl oz\./,
      ),
    ).toBeVisible();
  });

  it('keeps the typical figure while fewer than two hundred prints speak against it', async () => {
    await withRecord({ ...measured, runs: measured.runs.slice(1), refills: measured.refills.slice(1) });
    await userEvent.click(await screen.findByRole('button', { name: 'Use the measured figures' }));
    expect(workshop().rates.laydown?.origin).not.toBe('measured');
    expect(screen.getByText(/200 prints between refills make it more sure.*120 are there/)).toBeVisible();
  });

  it('has an entry taken back by its button, and counted again', async () => {
    await withRecord(measured);
    await userEvent.click(
      (await screen.findAllByRole('button', { name: /^Take back Refill/ }))[0] ?? document.body,
    );
    expect(record().refills).toHaveLength(3);
    await userEvent.click(screen.getByRole('button', { name: 'Count it again' }));
    await eventually(() => expect(record().refills).toHaveLength(4));
  });

  it('has an entry corrected in one step: what was noted wrongly counts no more, and undo brings it back', async () => {
    await withRecord(measured);
    await userEvent.click(await screen.findByRole('button', { name: 'Correct Refill of Feb 1, 2026' }));
    const form = within(screen.getByRole('form', { name: 'Correct Refill of Feb 1, 2026' }));
    const field = form.getByRole('textbox', { name: 'Poured in, all colours' });
    expect(field).toHaveValue('122.4');
    await userEvent.clear(field);
    await userEvent.type(field, '212.4');
    await userEvent.click(form.getByRole('button', { name: 'Put it right' }));
    expect(screen.queryByRole('form', { name: /^Correct/ })).not.toBeInTheDocument();
    const day = () => record().refills.filter((refill) => refill.day === '2026-02-01');
    expect(day()).toMatchObject([{ mL: 212.4 }]);
    // 122.4 + 81.2 + 32.6 are 236.2 mL; 90 more are 326.2.
    expect(screen.getByText(/280 prints between refills took 326\.2 mL/)).toBeVisible();
    expect(screenStore().getState().undoLabel).toBe('Correct Refill of Feb 1, 2026');
    await undo();
    expect(day()).toMatchObject([{ mL: 122.4 }]);
  });

  it('is there again after a reload, the same', async () => {
    await withRecord(measured);
    const before = record();
    await screenStore().flush();
    cleanup();
    leaveScreens();
    await enterInk();
    expect(record()).toEqual({
      refills: before.refills.map((refill) => ({ ...refill, id: expect.any(String) })),
      runs: before.runs.map((run) => ({ ...run, id: expect.any(String) })),
    });
    expect(screen.getByText(/280 prints between refills took 236\.2 mL/)).toBeVisible();
  });
});
