'use client';

import { Advice } from '@/app/_controls/Advice';
import { Button } from '@/app/_controls/Button';
import { CardSection } from '@/app/_controls/CardSection';
import { Fold } from '@/app/_controls/Fold';
import { Answer } from '@/app/_docket/common/Answer';
import type { EveningOnScreen } from '@/app/_evening/eveningOnScreen';
import { AmountField } from '@/app/_fields/AmountField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { halfTyped } from '@/app/_fields/formMemory';
import { NumberField } from '@/app/_fields/NumberField';
import { minorWords } from '@/app/_words/orders/minorWords';
import { beyondWords, cardAnswer, feesWords, ticketsWords } from '@/app/_words/stall/evening/moneyWords';
import { slipNames } from '@/app/_words/stall/evening/slipNames';
import { type EveningAnswers, eveningAnswersSchema } from '@/lib/stall/evening/eveningAnswers';
import { numberLimits } from '@/shared/limits';
import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import { dayCloseSchema } from '@/shared/schemas/stallPapers';
import { Payout } from './Payout';
import styles from './Slips.module.css';
import { Sums } from './Sums';

/** What cards brought, what they cost, and what should reach the bank. */
export function CardSlip({ on }: Readonly<{ on: EveningOnScreen }>) {
  const { evening, answers, say, locale, formatter } = on;
  const { money, plan, soldFrom } = evening;
  const { currency } = plan;
  const { card } = answers;
  const setCard = (more: Partial<EveningAnswers['card']>) => say({ card: { ...card, ...more } });
  const minor = (amount: number) => minorWords(amount, currency, locale);
  const units = (amount: number | null) =>
    amount === null ? null : fromMinor(amount as MinorUnits, currency);
  const isAsked = soldFrom === 'count';
  const total = (
    <AmountField
      label="The reader’s total"
      currency={currency}
      value={units(card.total)}
      minorLimits={numberLimits(dayCloseSchema, ['money', 'payout', 'minor'])}
      hint={isAsked ? '0 where no card was taken.' : 'Empty: as tapped.'}
      half={halfTyped(on.form, 'card')}
      onCommit={(value) =>
        setCard({ total: value === null ? null : toMinor(value, currency), isRight: false })
      }
    />
  );
  const tickets = (
    <NumberField
      label="Card tickets"
      width="narrow"
      value={card.tickets}
      {...numberLimits(eveningAnswersSchema, ['card', 'tickets'])}
      hint="As the reader counts them."
      half={halfTyped(on.form, 'tickets')}
      onCommit={(value) => setCard({ tickets: value })}
    />
  );
  const isEstimated = money.ticketsAre !== 'counted';
  return (
    <CardSection
      numeral={2}
      id="evening-card"
      heading={slipNames.card.heading}
      answer={<Answer words={cardAnswer(evening, card.total !== null, locale)} />}
    >
      <Sums
        rows={[
          { name: ticketsWords(evening, formatter), figure: minor(money.card) },
          { name: feesWords(evening, formatter), figure: minor(-money.fees) },
          ...(money.commission === 0
            ? []
            : [{ name: 'the place keeps, of all takings', figure: minor(-money.commission) }]),
        ]}
      />
      {money.beyond > 0 && (
        <div className={styles.ask}>
          <Advice severity="caution">{beyondWords(evening, locale)}</Advice>
          <Button kind="quiet" onPress={() => setCard({ isRight: !card.isRight })}>
            {card.isRight ? 'It is right: take back' : 'It is right'}
          </Button>
        </div>
      )}
      {(isAsked || isEstimated) && (
        <FieldGroup>
          {isAsked && total}
          {isEstimated && tickets}
        </FieldGroup>
      )}
      <Payout on={on} />
      {!isAsked && (
        <Fold
          summary="The reader says otherwise"
          line={card.total === null && card.tickets === null ? 'as tapped' : 'as you say'}
        >
          <FieldGroup>
            {total}
            {!isEstimated && tickets}
          </FieldGroup>
        </Fold>
      )}
    </CardSection>
  );
}
