// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import '@/tests/app/_screens/stage';
import { act, cleanup, fireEvent, screen, within } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { addDays } from '@/shared/days';
import { leaveScreens, screenStore } from '@/tests/app/_screens/screens';
import { RUN } from '@/tests/fixtures/clubPressing';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { eventually } from '@/tests/tools/eventually';
import { openDialogs } from '@/tests/tools/openDialogs';
import { beginRun, enterPress, pressed } from './inPress';

vi.mock('next/navigation', () => ({
  usePathname: () => `/making/${RUN}/press`,
  useRouter: () => ({ push: () => undefined }),
}));

beforeEach(openDialogs);
afterEach(() => vi.useRealTimers());

const key = (name: RegExp): HTMLElement => screen.getByRole('button', { name });
const tap = (name: RegExp) => fireEvent.click(key(name));
const kept = () => eventually(() => expect(screen.getByText(/^no signal needed · kept/)).toBeVisible());

describe('the press', () => {
  it('leads to the run where none was begun', async () => {
    await act(() => screenStore().open());
    await enterPress();
    expect(screen.getByRole('heading', { level: 1, name: /run is not here/ })).toBeVisible();
  });

  it('keeps a good one with one tap, and says how far the print is', async () => {
    const standardId = await beginRun();
    await enterPress();
    expect(screen.getByRole('heading', { level: 1, name: 'Ramblers: Back' })).toBeVisible();
    tap(/^Good/);
    expect(key(/^Good/)).toHaveTextContent('1 so far of 37');
    expect(pressed()).toEqual([
      {
        ...{ runId: RUN, standardId, jobId: 'club', lineId: 'shirts', placementId: 'back' },
        ...{ size: 'M', result: 'good', fault: null },
      },
    ]);
    expect(screen.getByText(/^The first is out/)).toBeVisible();
    await kept();
  });

  it('keeps a lost one at once, and its cause by one tap more, in the place of it', async () => {
    await beginRun();
    await enterPress();
    tap(/^Scrap/);
    expect(pressed()).toMatchObject([{ size: 'M', result: 'scrap', fault: null }]);
    expect(screen.getByRole('heading', { name: 'What is wrong with it' })).toHaveFocus();
    tap(/^Specks$/);
    expect(pressed()).toMatchObject([{ size: 'M', result: 'scrap', fault: 'specks' }]);
    expect(key(/^Scrap/)).toHaveTextContent('1 so far, specks');
    expect(key(/^M1 of 2/)).toBeVisible();
    await kept();
  });

  it('leaves six causes open, those of its recipe first, and has the rare ones behind one more', async () => {
    await beginRun();
    await enterPress();
    const tiles = () =>
      within(screen.getByRole('region', { name: 'What is wrong with it' }))
        .getAllByRole('button')
        .map(({ textContent }) => textContent);
    tap(/^Scrap/);
    expect(tiles().slice(0, 6)).toEqual([
      ...['Ghost', 'Specks', 'Blurred', 'Pale', 'Reversed'],
      'Blank faultfound before it was pressed',
    ]);
    expect(tiles()).toHaveLength(9);
    tap(/^Other cause$/);
    expect(key(/^Crooked$/)).toHaveFocus();
    tap(/^Patchy$/);
    expect(pressed()).toMatchObject([{ result: 'scrap', fault: 'patchy' }]);
    tap(/^Good/);
    tap(/^Scrap/);
    // What this recipe had before comes first.
    expect(tiles().slice(0, 2)).toEqual(['Patchy', 'Ghost']);
    tap(/^Say it later$/);
    await kept();
  });

  it('stops at the same fault twice running, and goes on when told', async () => {
    await beginRun();
    await enterPress();
    for (let piece = 0; piece < 2; piece += 1) {
      tap(/^Scrap/);
      tap(/^Ghost$/);
    }
    expect(screen.getByText('M has no spare left; 9 still to be good.')).toBeVisible();
    const alarm = screen.getByRole('heading', { name: 'Ghost, twice running: stop' }).parentElement;
    expect(alarm).toHaveTextContent(
      'Tape all four edges, cool in place, lift straight. Press one, look, go on.',
    );
    // Two of 37 running at 3 %: by hand near 36 × 0.0009 × 0.97 = 3.1 %, 1 in 32.
    expect(alarm).toHaveTextContent('About 1 in 32 runs does this by bad luck.');
    tap(/^Stop after this$/);
    expect(screen.getByRole('heading', { name: 'Stopped: ghost' })).toBeVisible();
    expect(screenStore().getState().entries.runStep[0]?.body).toMatchObject({
      day: TEST_DAY,
      step: { what: 'stopped', fault: 'ghost' },
    });
    tap(/^Go on$/);
    expect(screen.queryByText(/^Stopped/)).toBeNull();
    // Nor is it told again of the same two; of a third it is.
    expect(screen.queryByRole('heading', { name: /twice running/ })).toBeNull();
    tap(/^Scrap/);
    tap(/^Ghost$/);
    expect(screen.getByRole('heading', { name: 'Ghost, twice running: stop' })).toBeVisible();
    await kept();
  });

  it('takes a lost one for a good one, or for a faulty blank', async () => {
    await beginRun();
    await enterPress();
    tap(/^Scrap/);
    tap(/^No, it is good$/);
    expect(pressed()).toMatchObject([{ result: 'good', fault: null }]);
    tap(/^Scrap/);
    tap(/^Blank fault/);
    expect(pressed()).toHaveLength(1);
    expect(screenStore().getState().entries.blankFault[0]?.body).toEqual({
      ...{ runId: RUN, blankId: 'tee', size: 'M', lot: null, pieces: 1, fault: null },
    });
    expect(key(/^M1 of 2/)).toBeVisible();
    await kept();
  });

  it('undoes the last of this device, and asks for its verdict again', async () => {
    await beginRun();
    await enterPress();
    tap(/^L2/);
    tap(/^Good/);
    tap(/^Scrap/);
    tap(/^Say it later$/);
    expect(screen.getByText('One was lost and nobody said why.')).toBeVisible();
    tap(/^Undo/);
    expect(pressed()).toMatchObject([{ size: 'L', result: 'good' }]);
    tap(/^Undo/);
    expect(pressed()).toEqual([]);
    expect(key(/^Undo/)).toHaveTextContent('nothing yet');
    await kept();
  });

  it('names a cause later, and the piece keeps its place', async () => {
    await beginRun();
    await enterPress();
    tap(/^Scrap/);
    tap(/^Say it later$/);
    tap(/^Good/);
    tap(/^Say why$/);
    fireEvent.click(within(screen.getByRole('dialog')).getByRole('button', { name: 'Pale' }));
    expect(within(screen.getByRole('dialog')).getByText('Every one has its cause.')).toBeVisible();
    const scrap = pressed().find(({ result }) => result === 'scrap');
    expect(scrap).toMatchObject({ fault: 'pale', pressedAt: expect.any(Number) });
    await kept();
  });

  it('counts the dwell down by one tap, judges the one lifted while the next is pressed, and finds both after a reload', async () => {
    await beginRun();
    vi.useFakeTimers({ toFake: ['Date', 'setInterval', 'clearInterval'], now: Date.now() });
    await enterPress();
    expect(screen.getByRole('timer')).toHaveTextContent('0:55');
    tap(/heat/);
    act(() => void vi.advanceTimersByTime(4000));
    expect(screen.getByRole('timer')).toHaveTextContent('0:06');
    act(() => void vi.advanceTimersByTime(8000));
    expect(screen.getByText(/^dry: lay the print on/)).toBeVisible();
    tap(/press55/);
    act(() => void vi.advanceTimersByTime(17_000));
    expect(screen.getByRole('timer')).toHaveTextContent('0:38');
    expect(screen.getByText('17 s in')).toBeVisible();
    act(() => void vi.advanceTimersByTime(39_000));
    expect(screen.getByText(/^cooling in place/)).toBeVisible();
    act(() => void vi.advanceTimersByTime(12_000));
    expect(screen.getByRole('timer')).toHaveTextContent('Lift');
    // L is pressed next, while the M waits for its verdict.
    tap(/^L2/);
    tap(/heat/);
    tap(/press55/);
    cleanup();
    leaveScreens();
    await act(() => screenStore().open());
    await enterPress();
    act(() => void vi.advanceTimersByTime(5000));
    expect(screen.getByRole('timer')).toHaveTextContent('0:50');
    tap(/^Good/);
    expect(pressed()).toMatchObject([{ size: 'M', result: 'good' }]);
    tap(/^Good/);
    expect(pressed()).toMatchObject([{ size: 'M' }, { size: 'L' }]);
  });

  it('leads on to the badge once all backs are good, and back for the spare of one that was lost there', async () => {
    await beginRun();
    await enterPress();
    for (let piece = 0; piece < 37; piece += 1) tap(/^Good/);
    // Nobody presses the next print unaware: it is up once it is asked for.
    expect(screen.getByRole('heading', { name: 'Back is done' })).toBeVisible();
    expect(screen.getByText('37 good, 0 lost')).toBeVisible();
    expect(screen.queryByRole('button', { name: /^Good/ })).toBeNull();
    tap(/^Go on with Badge/);
    expect(screen.getByRole('heading', { level: 1, name: 'Ramblers: Badge' })).toBeVisible();
    tap(/^Second/);
    tap(/^Pale$/);
    expect(pressed().at(-1)).toMatchObject({ placementId: 'badge', result: 'second', fault: 'pale' });
    for (let piece = 0; piece < 36; piece += 1) tap(/^Good/);
    // 36 of 37 shirts are left; one more goes through the back first.
    expect(screen.getByRole('heading', { name: 'Badge: nothing left to press' })).toBeVisible();
    expect(screen.getByText('36 good, 1 for less, 0 lost, 1 still wanted')).toBeVisible();
    tap(/^Go on with Back/);
    tap(/^Good/);
    tap(/^Go on with Badge/);
    tap(/^Good/);
    expect(await screen.findByRole('heading', { name: 'All is pressed' })).toBeVisible();
    await kept();
  });

  it('shows what came of it once everything is pressed, and takes a further piece behind More', async () => {
    await beginRun();
    await enterPress();
    tap(/^Scrap/);
    tap(/^Say it later$/);
    for (let piece = 0; piece < 37; piece += 1) tap(/^Good/);
    tap(/^Go on with Badge/);
    for (let piece = 0; piece < 37; piece += 1) tap(/^Good/);
    const table = await screen.findByRole('table', { name: 'Pressed by size' });
    const row = (name: RegExp) => within(table).getByRole('row', { name });
    expect(row(/^M /)).toHaveTextContent('M9 of 91');
    expect(row(/^In all/)).toHaveTextContent('In all37 of 371');
    expect(screen.getByText('1 lost: nobody said why 1.')).toBeVisible();
    expect(screen.getByRole('link', { name: 'What came of it' })).toHaveAttribute(
      'href',
      `/making/${RUN}/after`,
    );
    tap(/^Say why$/);
    tap(/^Ghost$/);
    expect(screen.getByText('1 lost: ghost 1.')).toBeVisible();
    expect(screen.queryByRole('button', { name: /^Good/ })).toBeNull();
    tap(/^More$/);
    tap(/^One more L$/);
    tap(/^Good/);
    expect(pressed().at(-1)).toMatchObject({ placementId: 'badge', size: 'L', result: 'good' });
    expect(screen.getByRole('table', { name: 'Pressed by size' })).toBeVisible();
    expect(screen.getByText('Badge, L: 1 more pressed than were there.', { exact: false })).toBeVisible();
    await kept();
  });

  it('says what cannot be made once no blank is left', async () => {
    await beginRun();
    await enterPress();
    tap(/^3XL/);
    tap(/^Scrap/);
    tap(/^Ghost$/);
    // The only 3XL is lost, and no other was laid out.
    for (let piece = 0; piece < 36; piece += 1) tap(/^Good/);
    expect(screen.getByText('36 good, 1 lost, 1 still wanted')).toBeVisible();
    tap(/^Go on with Badge/);
    for (let piece = 0; piece < 36; piece += 1) tap(/^Good/);
    expect(
      await screen.findByRole('heading', { name: '1 piece cannot be made: no blank is left' }),
    ).toBeVisible();
    await kept();
  });

  it('tells that two devices began the run', async () => {
    await beginRun();
    await beginRun();
    await enterPress();
    expect(screen.getByText(/^Two devices each began this run/)).toBeVisible();
    await kept();
  });

  it('notes how hot the platen is, and who signed the first', async () => {
    await beginRun();
    await enterPress();
    tap(/^More$/);
    fireEvent.click(screen.getByText('First off'));
    fireEvent.change(await screen.findByLabelText('Who looked at the first back'), {
      target: { value: 'Alex' },
    });
    fireEvent.blur(screen.getByLabelText('Who looked at the first back'));
    tap(/^Sign it$/);
    expect(screenStore().getState().entries.runStep.at(-1)?.body.step).toEqual({
      what: 'firstOff',
      placementId: 'back',
      by: 'Alex',
    });
    await kept();
  });

  it('notes a test press with scores, and says what it changed', async () => {
    await beginRun();
    await enterPress();
    tap(/^More$/);
    tap(/^Note a test press$/);
    const form = screen.getByRole('form', { name: 'Test press' });
    expect(within(form).getByText('The first test of this blank in this press.')).toBeVisible();
    tap(/^Note the test$/);
    expect(screenStore().getState().entries.pressTest).toEqual([]);
    tap(/^Sharpness: 5$/);
    tap(/^Note the test$/);
    expect(screenStore().getState().entries.pressTest[0]?.body).toMatchObject({
      ...{ runId: RUN, jobId: 'club', blankId: 'tee', pressId: 'flat', position: 'back' },
      scores: { sharpness: 5, density: null },
      day: TEST_DAY,
    });
    await kept();
  });

  it('takes a test of an earlier day, and none of a day to come', async () => {
    await beginRun();
    await enterPress();
    tap(/^More$/);
    tap(/^Note a test press$/);
    tap(/^Sharpness: 5$/);
    fireEvent.click(screen.getByText('Day, lots, photo, note'));
    await screen.findByLabelText('Day');
    const set = (day: string) => fireEvent.change(screen.getByLabelText('Day'), { target: { value: day } });
    set(addDays(TEST_DAY, 1));
    tap(/^Note the test$/);
    expect(screenStore().getState().entries.pressTest).toEqual([]);
    set(addDays(TEST_DAY, -2));
    tap(/^Note the test$/);
    expect(screenStore().getState().entries.pressTest[0]?.body.day).toBe(addDays(TEST_DAY, -2));
    await kept();
  });
});
