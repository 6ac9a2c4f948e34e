import type { SectionState } from '@/app/_sections/sections';
import { amountWords } from '@/app/_words/amountWords';
import type { Formatter } from '@/app/_words/formatter';
import { listed } from '@/app/_words/listed';
import { hoursWords } from '@/app/_words/minutesWords';
import { duesOf } from '@/lib/stall/days/duesOf';
import { pressStanding } from '@/lib/stall/making/toPress';
import type { BringRange } from '@/lib/stall/plan/bringGrid';
import { dayCosts } from '@/lib/stall/plan/costs/dayCosts';
import type { StallAnswer } from '@/lib/stall/plan/stallPlanned';
import type { StallDay } from '@/shared/schemas/stallDay';
import type { Workshop } from '@/shared/schemas/workshop';
import { toldCosts } from './dayWords';
import { priceFigure } from './priceFigure';
import type { StallSectionId } from './stallSections';

interface StateOfDay {
  readonly stallDay: StallDay;
  readonly workshop: Workshop;
  readonly plan: Extract<StallAnswer, { kind: 'planned' }> | null;
  readonly grid: readonly BringRange[];
  /** The day on which the plan was fixed; null while it is not. */
  readonly fixedOn: string | null;
  readonly locale: string;
  readonly formatter: Formatter;
}

/** What the index says of each section of a stall day. */
export function stallStates(state: StateOfDay): Readonly<Record<StallSectionId, SectionState>> {
  const { plan, grid, fixedOn, formatter } = state;
  const differ = grid.reduce((sum, { mine, advised }) => sum + advised - mine, 0);
  const changed = grid.some(({ rows }) =>
    rows.some(({ cells }) => cells.some(({ held, advised }) => held !== null && held !== advised)),
  );
  return {
    'the-day': dayState(state),
    'how-many':
      plan === null
        ? plain('')
        : changed
          ? { text: fewerWords(differ, formatter), tone: 'todo', count: 0 }
          : plain(
              formatter.count(
                grid.reduce((sum, { mine }) => sum + mine, 0),
                'piece',
              ),
            ),
    weather:
      plan === null
        ? plain('')
        : plain(`a loss on ${formatter.number(plan.mine.spread.lossChance * 100, 0)} of 100`),
    'go-or-stay': plan === null ? plain('') : plain(plan.mine.goOrStay.verdict === 'stay' ? 'stay' : 'go'),
    prices: plan === null ? plain('') : plain(listed(pricesIn(plan.goods, state))),
    making: plan === null ? plain('') : plain(makingState(plan, state)),
    car: plain(fixedOn === null ? 'not fixed yet' : `fixed on ${formatter.day(fixedOn)}`),
  };
}

// Helpers

const plain = (text: string): SectionState => ({ text, tone: 'plain', count: 0 });

/** Hours of the whole batch until some of it is pressed, then what is left of it. */
function makingState(
  { goods, mine }: Extract<StallAnswer, { kind: 'planned' }>,
  { locale, formatter }: Pick<StateOfDay, 'locale' | 'formatter'>,
): string {
  const { pieces, isBegun } = pressStanding(goods);
  if (pieces === 0) return 'nothing to press';
  if (isBegun) return `${formatter.count(pieces, 'piece')} to press`;
  return `${hoursWords(mine.benchHours, locale)} at the bench`;
}

function fewerWords(differ: number, formatter: Formatter): string {
  if (differ === 0) return 'others advised';
  return `${formatter.number(Math.abs(differ), 0)} ${differ < 0 ? 'fewer' : 'more'} advised`;
}

/** Each price once, in the order of the goods, without decimals that say nothing. */
const pricesIn = (
  goods: readonly { readonly price: number }[],
  { workshop, locale }: Pick<StateOfDay, 'workshop' | 'locale'>,
): readonly string[] =>
  [...new Set(goods.map(({ price }) => price))].map((price) => priceFigure(price, workshop.currency, locale));

function dayState({ stallDay, workshop, locale }: StateOfDay): SectionState {
  const dues = duesOf(stallDay).length;
  if (dues > 0) return { text: `${dues} to settle`, tone: 'todo', count: dues };
  const costs = toldCosts(stallDay, dayCosts(stallDay, workshop));
  if (costs === null) return { text: 'costs missing', tone: 'todo', count: 0 };
  const { money, hours } = costs;
  const told = [
    ...(money === null ? [] : [amountWords(money, workshop.currency, locale)]),
    ...(hours === null ? [] : [hoursWords(hours, locale)]),
  ];
  return plain(told.length === 0 ? 'costs not told yet' : told.join(' and '));
}
