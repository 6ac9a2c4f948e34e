'use client';

import type { ListVoice } from '@/app/_words/docket/breakListWords';
import type { ListAnswer } from '@/lib/studies/breaks/breaksAnswer';
import { fromMinor } from '@/shared/money';
import styles from './BreaksTest.module.css';

type PriceTariffProps = Readonly<{ answer: ListAnswer; piece: string; voice: ListVoice; priceStep: number }>;

/** The price in one sentence, so much to start and so much a piece; its neighbours on the ending; the ceiling. */
export function PriceTariff({ answer, piece, voice, priceStep }: PriceTariffProps) {
  const { tariff, endings, ceiling, currency } = answer;
  const { speak } = voice;
  return (
    <div className={styles.facts}>
      {tariff !== null && (
        <p>
          <strong>
            {speak.money(tariff.start)} to start and {speak.money(tariff.each)} a {piece}
          </strong>{' '}
          is what your target comes to from 1 to 100 pieces. It is off by at most{' '}
          {speak.money(tariff.largestError)} a {piece}, at {speak.count(tariff.largestErrorAt, 'piece')}, and
          by no more than {speak.money(tariff.smallError)} from {speak.count(tariff.smallFrom, 'piece')} on.{' '}
          {tariff.written === null
            ? 'It starts below nothing, so it is no way to sell.'
            : `Written out: ${speak.money(fromMinor(tariff.written.start, currency))} and ${speak.money(fromMinor(tariff.written.each, currency))}.`}
        </p>
      )}
      {endings !== null && (
        <p>
          One price for the whole job asks for {speak.money(endings.target)}. On your ending of{' '}
          {speak.money(priceStep)} its neighbours are{' '}
          {endings.below !== null && `${endingWords(endings.below)} and `}
          {endingWords(endings.above)}; the {endings.recommended === 'above' ? 'upper' : 'lower'} is
          suggested.
        </p>
      )}
      {ceiling !== null && (
        <p>
          This crowd pays at most {speak.money(ceiling.ceiling)}, and a {piece}{' '}
          {ceiling.kind === 'underFloor'
            ? `takes ${speak.money(ceiling.needed)} out of your pocket: each one sold costs you ${speak.money(ceiling.needed - ceiling.ceiling)}, and a discount is no answer.`
            : `asks for ${speak.money(ceiling.needed)} at your target: ${speak.money(ceiling.needed - ceiling.ceiling)} of it would be missing.`}{' '}
          Cheaper blanks, a smaller print or one fewer, less scrap, fewer minutes or a larger batch close the
          gap; section 7 says what each would bring.
        </p>
      )}
    </div>
  );

  function endingWords(one: NonNullable<typeof endings>['above']): string {
    const even =
      one.breakEvenAt === null
        ? 'it never breaks even'
        : `it breaks even at ${speak.count(one.breakEvenAt, 'piece')}`;
    return `${speak.money(fromMinor(one.price, currency))} (margin ${speak.share(one.margin)}; ${even})`;
  }
}
