// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useMemo } from 'react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { MakingSection } from '@/app/_stallMaking/MakingSection';
import { studies } from '@/app/_studies/studies';
import type { StudyAsk } from '@/app/_studies/useStudies';
import { SPRING_FAIR_ID } from '@/lib/examples/springFair';
import { carHeld } from '@/lib/stall/car/carHeld';
import type { BroughtAnswer } from '@/lib/stall/making/toPress';
import { finishedAtHome } from '@/lib/stock/finishedAtHome';
import { foldStock } from '@/lib/stock/foldStock';
import type { Job } from '@/shared/schemas/job';
import { bodyOf, clearScreens, enter, screenStore, undo } from '@/tests/app/_screens/screens';
import { grid } from '@/tests/fixtures/costed';

vi.mock('next/navigation', () => ({
  usePathname: () => '/stall/spring-fair',
  useRouter: () => ({ push: () => undefined }),
}));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('@/tests/app/_screens/screens');
  return { appDocuments };
});
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

afterEach(() => {
  cleanup();
  clearScreens();
});

const fair = () => bodyOf('stallDay', SPRING_FAIR_ID);
const job = (id: string): Job => bodyOf('job', id);

/** The maker's own numbers of the worked fair, and so many of a Fern M less. */
const planned = (less = 0, atHome = 0): BroughtAnswer => ({
  kind: 'planned',
  goods: fair().held.map(({ bring, ...goods }) => {
    const isFernM = goods.jobId === 'fair-shirts' && goods.lineId === 'fern' && goods.size === 'M';
    return {
      ...{ ...goods, design: goods.lineId, mine: bring - (isFernM ? less : 0) },
      atHome: isFernM ? atHome : 0,
    };
  }),
});

async function show(answer: () => BroughtAnswer) {
  await enter(
    <WithWorkspace>
      {(workspace) => {
        const { stallDays, piles, entries, papers } = workspace;
        const stallDay = stallDays[SPRING_FAIR_ID];
        return (
          <>
            <h1>Stall day</h1>
            {stallDay && (
              <MakingSection
                {...{ workspace, stallDay }}
                id={SPRING_FAIR_ID}
                answer={shown(answer)}
                left={carHeld({ piles, moves: entries.stockMove }, papers).left}
                numeral={6}
              />
            )}
          </>
        );
      }}
    </WithWorkspace>,
  );
}
/* The same answer at every drawing, as a worker's is. */
const answers = new WeakMap<() => BroughtAnswer, BroughtAnswer>();
function shown(answer: () => BroughtAnswer): BroughtAnswer {
  const made = answers.get(answer) ?? answer();
  answers.set(answer, made);
  return made;
}

const piles = () => {
  const { stockMove, stockTransfer, stockCount } = screenStore().getState().entries;
  return foldStock([...stockMove, ...stockTransfer, ...stockCount]);
};
const atHome = (lineId: string, size: string) =>
  finishedAtHome(piles()).find((one) => one.lineId === lineId && one.size === size)?.pieces;
const section = () => screen.getByRole('region', { name: 'Making' });
const put = () => screen.queryByRole('button', { name: 'Put them into the jobs' });
const fernM = (of: Job) =>
  of.lines.find(({ id }) => id === 'fern')?.quantities.find(({ size }) => size === 'M')?.quantity;

describe('what is pressed for a stall day', () => {
  it('waits for the plan', async () => {
    await show(() => ({ kind: 'refused' }));
    expect(section()).toHaveTextContent('Nothing to press yet: the plan comes first');
    expect(put()).toBeNull();
  });

  it('takes the 12.67 hours of the worked fair in three sessions, and its jobs say so already', async () => {
    await show(() => planned());
    expect(section()).toHaveTextContent(/12 h 40 min in three sessions/);
    expect(section()).toHaveTextContent('The jobs have these numbers');
    expect(put()).toBeNull();
  });

  it('puts other numbers into their job as one step, and undo takes them out', async () => {
    await show(() => planned(2));
    expect(fernM(job('fair-shirts'))).toBe(8);
    await userEvent.click(put() ?? section());
    expect(fernM(job('fair-shirts'))).toBe(6);
    expect(put()).toBeNull();
    await act(async () => {
      await screenStore().actions.undo();
    });
    expect(fernM(job('fair-shirts'))).toBe(8);
  });

  it('tells what is short beside what lies at home', async () => {
    await show(() => planned(0, 6));
    await userEvent.click(screen.getByRole('button', { name: /131|126|by size/ }));
    expect(section()).toHaveTextContent('Fern shirt: S 4, M 2, L 9, XL 6, 2XL 2, 3XL 1; the job says 30 now');
    expect(section()).toHaveTextContent(/Nobody counted finished pieces at home of \d+ designs and sizes/);
  });

  it('makes a job beside one that is made, once', async () => {
    await show(() => planned());
    act(() => {
      screenStore().actions.edit('Made', [
        { do: 'change', kind: 'job', id: 'fair-mugs', to: (now: Job): Job => ({ ...now, state: 'done' }) },
      ]);
    });
    expect(section()).toHaveTextContent(/is made and stays as it is: a job for this day is made beside it\./);
    await userEvent.click(put() ?? section());
    // Which day it is for stands above; the name of the fair is not said in each line.
    expect(section()).not.toHaveTextContent('for Exampleton Spring Fair');
    expect(screen.getByRole('link', { name: job('fair-mugs').name })).toHaveAttribute(
      'href',
      `/jobs/${fair().made[0]?.jobId}`,
    );
    const [made, ...more] = fair().made;
    expect(more).toEqual([]);
    expect(made?.of).toBe('fair-mugs');
    expect(job(made?.jobId ?? '').state).toBe('draft');
    expect(job('fair-mugs').state).toBe('done');
    expect(put()).toBeNull();
  });

  it('is nothing where all of it lies at home', async () => {
    await show(() => ({
      kind: 'planned',
      goods: fair().held.map(({ bring, ...goods }) => ({
        ...{ ...goods, design: goods.lineId, mine: bring, atHome: bring },
      })),
    }));
    expect(section()).toHaveTextContent('Nothing to press: all of it lies finished at home');
    expect(put()).toBeNull();
  });

  it('puts what a job has pressed home by one press, which undo takes back', async () => {
    await show(() => planned());
    // 4 + 8 + 9 + 6 + 2 + 1, 3 + 7 + 8 + 5 + 2 + 1, 3 + 6 + 7 + 5 + 2 + 1 and 2 + 4 + 5 + 3 + 1 + 1 are 96.
    await userEvent.click(screen.getByRole('button', { name: 'Pressed: 96 home, Spring Fair shirts' }));
    expect(atHome('otter', 'L')).toBe(7);
    expect(piles().reduce((sum, { quantity }) => sum + quantity, 0)).toBe(96);
    await undo();
    expect(piles()).toEqual([]);
  });

  it('notes what was counted of finished pieces at home, none of what was not typed, and undo takes it back', async () => {
    await show(() => planned());
    await userEvent.click(screen.getByRole('button', { name: 'Finished at home' }));
    const note = screen.getByRole('button', { name: 'Note what was counted' });
    await userEvent.click(note);
    expect(piles()).toEqual([]);
    const otter = within(
      screen.getByText('Shirts, otter', { selector: 'bdi' }).closest('fieldset') ?? section(),
    );
    expect(screen.getAllByText(/None of them is counted yet\.$/)).toHaveLength(1);
    expect(otter.queryByText(/counted yet/)).toBeNull();
    await userEvent.type(otter.getByLabelText('L'), '5');
    await userEvent.type(otter.getByLabelText('M'), '0');
    await userEvent.click(note);
    expect([piles().length, atHome('otter', 'L'), atHome('otter', 'M')]).toEqual([2, 5, 0]);
    expect(otter.getByText('5 noted.')).toBeVisible();
    expect(screen.getByText(/Where no number is noted, nobody counted yet\.$/)).toBeVisible();
    expect(otter.getByLabelText('L')).toHaveValue('');
    await undo();
    expect(piles()).toEqual([]);
  });

  it('names paper, ink and blanks to buy', async () => {
    await show(() => planned());
    await userEvent.click(screen.getByRole('button', { name: 'Paper, ink and blanks' }));
    expect(section()).toHaveTextContent(/\d+ letter sheets and \d+ mL of ink\./);
    // 96 at 0.9603 good ones are 99.97 blanks; nobody misses the last shirt, so spares for every size are not bought.
    expect(section()).toHaveTextContent(
      /polyester: 100 to buy \(S 13, M 26, L 30, XL 20, 2XL 7, 3XL 4\); 96 good pieces and 4 spare/,
    );
  });
});
