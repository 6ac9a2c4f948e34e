// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import '@/tests/app/_screens/stage';
import { act, cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { AfterRunScreen } from '@/app/_afterRun/AfterRunScreen';
import { canonicalText } from '@/lib/stored/canonicalText';
import { runSchema } from '@/shared/schemas/run';
import { bodyOf, enter, leaveScreens, screenStore } from '@/tests/app/_screens/screens';
import { clubFacts, clubStandard } from '@/tests/fixtures/clubStandard';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { eventually } from '@/tests/tools/eventually';

vi.mock('next/navigation', () => ({
  usePathname: () => '/making/run/after',
  useRouter: () => ({ push: () => undefined }),
}));

afterEach(() => {
  cleanup();
  leaveScreens();
});

/** The worked run, begun and made. */
async function makeRun(): Promise<void> {
  await act(() => screenStore().open());
  const { actions } = screenStore();
  const body = runSchema.parse({ name: 'Club shirts', works: [{ jobId: 'club' }] });
  await act(() => actions.edit('Run', [{ do: 'add', kind: 'run', id: 'run', body }]));
  await act(() =>
    actions.issue('Begin', {
      kind: 'runStandard',
      about: { kind: 'run', id: 'run' },
      series: 'runStandard run',
      body: (number) => ({ ...clubStandard(), number, issuedOn: TEST_DAY }),
    }),
  );
  const { pressings, actuals, hours } = clubFacts({ reprints: 622 });
  const entries = [...pressings, ...actuals, ...hours].map(({ kind, body: noted }) => ({
    kind,
    body: noted,
  }));
  await act(() => actions.note('Made', entries as Parameters<typeof actions.note>[1]));
}

const row = (name: string) => screen.getByRole('row', { name: new RegExp(`^${name}`) });
const press = (name: RegExp) => userEvent.click(screen.getByRole('button', { name }));

describe('after the run', () => {
  it('says what an hour paid and goes from the profit quoted to what came', async () => {
    await makeRun();
    await enter(<AfterRunScreen runId="run" />);
    expect(screen.getByText('48.29')).toBeVisible();
    expect(screen.getByText('56.26')).toBeVisible();
    expect(row('Profit as quoted')).toHaveTextContent('288.37');
    expect(row('Blanks used')).toHaveTextContent('−7.15');
    expect(row('Blanks used')).toHaveTextContent('2 ghost, 1 specks, 1 reversed');
    expect(row('Your time')).toHaveTextContent('−15.52');
    expect(row('Profit as it came')).toHaveTextContent('254.44');
    expect(screen.getByText(/^Bars torn off: the scale begins at/)).toBeVisible();
    expect(screen.getByText(/came out reversed/)).toBeVisible();
  });

  it('takes a measured figure over and back again, to the last bit', async () => {
    await makeRun();
    await enter(<AfterRunScreen runId="run" />);
    const before = canonicalText(bodyOf('blank', 'white-shirt'));
    await press(/^Take it over: Price of .*, S$/);
    expect(bodyOf('blank', 'white-shirt').sizes[0]?.price).toMatchObject({ value: 4.72, origin: 'yours' });
    await press(/^Take back: Price of .*, S$/);
    await eventually(() => expect(canonicalText(bodyOf('blank', 'white-shirt'))).toBe(before));
    expect(screenStore().getState().entries.rateTaken).toEqual([]);
  });

  it('keeps the cause of a gap, and closes the run', async () => {
    await makeRun();
    await enter(<AfterRunScreen runId="run" />);
    await userEvent.selectOptions(within(row('Your time')).getByRole('combobox'), 'Interruptions');
    await press(/^Close the run$/);
    expect(
      screenStore()
        .getState()
        .entries.runStep.map(({ body }) => body.step),
    ).toMatchObject([{ what: 'cause', line: 'labour', cause: 'interruption' }, { what: 'closed' }]);
    expect(screen.getByRole('button', { name: 'Open the run again' })).toBeVisible();
  });

  it('tells of a whole night, and keeps what was typed', async () => {
    await makeRun();
    await enter(<AfterRunScreen runId="run" />);
    const form = screen.getByRole('form', { name: 'Time worked' });
    await userEvent.selectOptions(within(form).getByRole('combobox'), 'Set-up');
    await userEvent.type(within(form).getByRole('textbox', { name: /^Time/ }), '600');
    await userEvent.tab();
    expect(within(form).getByText(/^That is a whole night/)).toBeVisible();
    await press(/^Note the time$/);
    expect(screenStore().getState().entries.hours.at(-1)?.body).toMatchObject({
      minutes: 600,
      element: 'setUp',
    });
  });

  it('refuses an amount of no blanks', async () => {
    await makeRun();
    await enter(<AfterRunScreen runId="run" />);
    await userEvent.type(screen.getByRole('textbox', { name: /^Paid for those blanks/ }), '200');
    await userEvent.tab();
    expect(screen.getByRole('button', { name: /^Note it/ })).toHaveAttribute('aria-disabled', 'true');
  });

  it('says so where there is no such run', async () => {
    await act(() => screenStore().open());
    await enter(<AfterRunScreen runId="none" />);
    expect(screen.getByRole('heading', { level: 1, name: /run is not here/ })).toBeVisible();
  });
});
