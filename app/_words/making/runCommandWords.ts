import { listed } from '@/app/_words/listed';
import { minorMoney } from '@/app/_words/orders/minorWords';
import type { GapLine } from '@/shared/schemas/making/runEvents';

interface Bar {
  readonly line: GapLine;
  readonly minor: number;
}

const others: Readonly<Partial<Record<GapLine, string>>> = {
  output: 'more or fewer good pieces',
  revenue: 'the price',
  freight: 'freight',
  otherCost: 'other costs',
  fees: 'fees',
};

/** Said where a run cannot be planned any more that has begun. */
export const cameAllTheSame =
  'It is not planned, but what it came to is told: held against what was frozen when it began.';

/** What of a bridge stands in no variance of the command's answer; none where the variances are all of it. */
export const otherBarsWords = (bars: readonly Bar[], currency: string, locale: string): readonly string[] =>
  bars.length === 0
    ? []
    : [
        `The bridge also has ${listed(
          bars.map(({ line, minor }) => `${others[line] ?? line} ${minorMoney(minor, currency, locale)}`),
        )}.`,
      ];
