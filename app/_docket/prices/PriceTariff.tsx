'use client';

import type { BreakListFormat } from '@/app/_words/docket/breakListWords';
import type { BreaksAnswer } from '@/lib/studies/breaks/breaksAnswer';
import { fromMinor } from '@/shared/money';
import styles from './BreaksTest.module.css';

type PriceTariffProps = Readonly<{
  answer: BreaksAnswer;
  piece: string;
  format: BreakListFormat;
  priceStep: number;
}>;

/** The price in one sentence, so much to start and so much a piece; its neighbours on the ending; the ceiling. */
export function PriceTariff({ answer, piece, format, priceStep }: PriceTariffProps) {
  const { tariff, endings, ceiling, currency } = answer;
  const { formatter } = format;
  return (
    <div className={styles.facts}>
      {tariff !== null && (
        <p>
          <strong>
            {formatter.money(tariff.start)} to start and {formatter.money(tariff.each)} a {piece}
          </strong>{' '}
          is what your target comes to from 1 to 100 pieces.{' '}
          {isShown(tariff.largestError) &&
            `It is off by at most ${formatter.money(tariff.largestError)} a ${piece}, at ${formatter.count(tariff.largestErrorAt, 'piece')}. `}
          Written out so that every order reaches its target:{' '}
          {formatter.money(fromMinor(tariff.written.start, currency))} and{' '}
          {formatter.money(fromMinor(tariff.written.each, currency))}.
        </p>
      )}
      {endings !== null && (
        <p>
          One price for the whole job needs {formatter.money(endings.target)} at the least. On your ending of{' '}
          {formatter.money(priceStep)}{' '}
          {endings.below === null || endings.below.price === endings.above.price
            ? `that is ${endingWords(endings.above)}.`
            : `${endingWords(endings.below)} lies below it and ${endingWords(endings.above)} above.`}
        </p>
      )}
      {ceiling !== null && (
        <p>
          This crowd pays at most {formatter.money(ceiling.ceiling)}, and a {piece}{' '}
          {ceiling.kind === 'underFloor'
            ? `takes ${formatter.money(ceiling.needed)} out of your pocket: each one sold costs you ${formatter.money(ceiling.needed - ceiling.ceiling)}, and a discount is no answer.`
            : `asks for ${formatter.money(ceiling.needed)} at your target: ${formatter.money(ceiling.needed - ceiling.ceiling)} of it would be missing.`}{' '}
          Cheaper blanks, a smaller print or one fewer, less scrap, fewer minutes or a larger batch close the
          gap; section 7 says what each would bring.
        </p>
      )}
    </div>
  );

  /** Whether an amount is any once it is written. */
  function isShown(amount: number): boolean {
    return formatter.money(amount) !== formatter.money(0);
  }

  function endingWords(one: NonNullable<typeof endings>['above']): string {
    const even =
      one.breakEvenAt === null
        ? 'it never breaks even'
        : `it breaks even at ${formatter.count(one.breakEvenAt, 'piece')}`;
    return `${formatter.money(fromMinor(one.price, currency))} (margin ${formatter.share(one.margin)}; ${even})`;
  }
}
