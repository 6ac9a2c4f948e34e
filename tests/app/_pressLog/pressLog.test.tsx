// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import '@/tests/app/_screens/stage';
import { act, fireEvent, screen } from '@testing-library/react';
import { describe, expect, it, vi } from 'vitest';
import { takeAttachment } from '@/app/_attachments/takeAttachment';
import { PressLogScreen } from '@/app/_pressLog/PressLogScreen';
import { addDays } from '@/shared/days';
import { pressTestSchema } from '@/shared/schemas/making/pressLog';
import { beginRun } from '@/tests/app/_press/inPress';
import { enter, screenStore } from '@/tests/app/_screens/screens';
import { clubRecipe, pieceOf } from '@/tests/fixtures/clubPressing';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

vi.mock('next/navigation', () => ({
  usePathname: () => '/making/log',
  useRouter: () => ({ push: () => undefined }),
}));

const noteTest = (more: object = {}) =>
  act(() => {
    const body = pressTestSchema.parse({
      ...{ day: TEST_DAY, blankId: 'tee', pressId: 'flat', recipe: clubRecipe, scores: { density: 5 } },
      ...more,
    });
    screenStore().actions.note('Test press', [{ kind: 'pressTest', body }]);
  });

describe('the press log', () => {
  it('says what to do where nothing was pressed yet, and has the table of faults', async () => {
    await act(() => screenStore().open());
    await enter(<PressLogScreen />);
    expect(screen.getByText(/^Nothing was pressed or tested yet\./)).toBeVisible();
    expect(screen.getByText('Change one thing at a time.')).toBeVisible();
  });

  it('says how far a recipe is, what the word proves and what is missing', async () => {
    await beginRun();
    for (let test = 0; test < 3; test += 1) await noteTest();
    await enter(<PressLogScreen />);
    expect(screen.getByText('tested')).toBeVisible();
    expect(screen.getByText(/3 tests in a row were good: it can come out right\./)).toBeVisible();
    expect(screen.getByText('0 of 30 good presses with at most 1 lost; 0 lost so far.')).toBeVisible();
    expect(screen.getByText('A check after 5 washes.')).toBeVisible();
  });

  it('says that the lost are counted since the last stretch was broken', async () => {
    const standardId = await beginRun();
    const scrap = pieceOf('M', 'scrap', { standardId, fault: 'pale' });
    const pieces = [scrap, scrap, ...Array.from({ length: 26 }, () => pieceOf('M', 'good', { standardId }))];
    await act(() => {
      screenStore().actions.note(
        'Pressed',
        pieces.map((body) => ({ kind: 'pressing' as const, body })),
      );
    });
    await enter(<PressLogScreen />);
    expect(
      screen.getByText(
        '26 of 30 good presses with at most 1 lost; 0 lost since 2 lost ended the last stretch.',
      ),
    ).toBeVisible();
    expect(screen.getByRole('button', { name: '28 presses, 2 lost' })).toBeVisible();
  });

  it('begins the question whether a test pays with what it knows, and says whence, until it is changed', async () => {
    const standardId = await beginRun();
    await noteTest();
    await noteTest({ faults: ['pale'] });
    await act(() => {
      screenStore().actions.note('Pressed', [
        { kind: 'pressing', body: pieceOf('M', 'good', { standardId }) },
      ]);
    });
    await enter(<PressLogScreen />);
    fireEvent.click(screen.getByRole('button', { name: 'Is a test worth it' }));
    const field = (name: RegExp) => screen.getByRole('textbox', { name });
    // By hand: (1 + 1) ÷ (5 + 3), 411.79 ÷ 37 and the same less 190.86 of blanks; 0.25 · 5 · 11.13 = 13.91.
    expect(field(/^Chance that/)).toHaveValue('25');
    expect(field(/^Lost with/)).toHaveValue('11.13');
    expect(field(/^Cost of the test/)).toHaveValue('5.97');
    expect(screen.getByText('By 2 tests and 1 run: 1 went wrong. 20 % was assumed before.')).toBeVisible();
    expect(screen.getByText('Test: on average it saves 13.91 USD and costs 5.97 USD.')).toBeVisible();
    const loss = field(/^Lost with/);
    fireEvent.change(loss, { target: { value: '4' } });
    fireEvent.blur(loss);
    expect(screen.queryByText(/^All that one piece of Club shirts costs/)).toBeNull();
    expect(screen.getByText(/^No test needed: on average it would save 5\.00 USD/)).toBeVisible();
  });

  it('names the next single move of a fault in the newest test, and two changes at once', async () => {
    await beginRun();
    await noteTest({ faults: ['pale'] });
    await noteTest({
      faults: ['pale'],
      recipe: { ...clubRecipe, dwellSeconds: 62, preheatSeconds: 15 },
    });
    await enter(<PressLogScreen />);
    expect(screen.getByText(/Set it 5 °F \(3 °C\) hotter\./)).toBeVisible();
    const tests = screen.getAllByRole('button', { name: '1 test' });
    for (const one of tests) fireEvent.click(one);
    expect(screen.getByText(/Changed since the test before: time and preheat, at once\./)).toBeVisible();
  });

  it('stands a test that is noted later before those of later days', async () => {
    await beginRun();
    await noteTest({ note: 'newest' });
    await noteTest({ day: addDays(TEST_DAY, -3), note: 'earlier' });
    await enter(<PressLogScreen />);
    fireEvent.click(screen.getByRole('button', { name: '2 tests' }));
    const notes = screen.getAllByText(/newest|earlier/).map((one) => one.textContent);
    expect(notes).toEqual(['; newest', '; earlier']);
    // Of two tests alike the earlier is the first, whenever it was noted.
    expect(screen.getByText(/The first test of this blank/)).toHaveTextContent('earlier');
  });

  it('shows the photo and the ink of a test', async () => {
    await beginRun();
    vi.stubGlobal(
      'URL',
      Object.assign(URL, { createObjectURL: () => 'blob:photo', revokeObjectURL: () => undefined }),
    );
    const taken = await takeAttachment(new File(['picture'], 'swatch.png', { type: 'image/png' }), {
      ...{ purpose: 'sample', addedOn: TEST_DAY, pause: async () => undefined },
    });
    if (taken.state !== 'taken') throw new Error('the photo was not taken');
    const { attachment, file } = taken;
    await act(async () => {
      const body = pressTestSchema.parse({
        ...{ day: TEST_DAY, blankId: 'tee', pressId: 'flat', recipe: clubRecipe, scores: { density: 5 } },
        ...{ photo: attachment, coverage: 1.1 },
      });
      screenStore().actions.note('Test press', [{ kind: 'pressTest', body }], [], [file]);
    });
    await enter(<PressLogScreen />);
    fireEvent.click(screen.getByRole('button', { name: '1 test' }));
    expect(screen.getByText(/ink 110 %/)).toBeVisible();
    expect(await screen.findByRole('img', { name: /^Photo of the test of/ })).toBeVisible();
  });

  it('tells the pieces of a run, and how often each alarm is for nothing', async () => {
    const standardId = await beginRun();
    act(
      () =>
        void screenStore().actions.note('Pieces', [
          { kind: 'pressing', body: pieceOf('M', 'good', { standardId }) },
          { kind: 'pressing', body: pieceOf('M', 'scrap', { standardId, fault: 'ghost' }) },
        ]),
    );
    await enter(<PressLogScreen />);
    fireEvent.click(screen.getByRole('button', { name: '2 presses, 1 lost' }));
    expect(screen.getByRole('link', { name: 'Ramblers' }).parentElement).toHaveTextContent(
      'Ramblers, Back: 1 good, 1 lost',
    );
    expect(screen.getByText(/3 in 20: stop and find the cause\./)).toHaveTextContent(
      'With only 3 % spoiled, 2.1 % of such blocks would show 3 or more by chance.',
    );
  });
});
