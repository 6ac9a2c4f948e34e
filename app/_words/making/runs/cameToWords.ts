import { minorMoney, minorWords } from '@/app/_words/orders/minorWords';
import type { RunResult } from '@/lib/variances/runResult';
import { stillToPress } from '@/lib/variances/stillToPress';
import type { RunStandard } from '@/shared/schemas/making/runPapers';

/** “37 of 37 good, profit 254.44 of 288.37 USD”; without a price, or where nobody noted a piece, what is known. */
export function cameToWords(
  standard: Pick<RunStandard, 'works'>,
  { made, bridge, currency }: Pick<RunResult, 'made' | 'bridge' | 'currency'>,
  locale: string,
): string {
  const { good, wanted } = stillToPress(standard, made);
  return [
    made === null ? 'no piece noted' : `${good} of ${wanted} good`,
    ...(bridge === null
      ? []
      : [
          `profit ${minorWords(bridge.to, currency, locale)} of ${minorMoney(bridge.from, currency, locale)}`,
        ]),
  ].join(', ');
}
