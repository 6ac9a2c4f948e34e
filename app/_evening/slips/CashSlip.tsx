'use client';

import { Advice } from '@/app/_controls/Advice';
import { Button } from '@/app/_controls/Button';
import { CardSection } from '@/app/_controls/CardSection';
import { Fold } from '@/app/_controls/Fold';
import { Answer } from '@/app/_docket/common/Answer';
import type { EveningOnScreen } from '@/app/_evening/eveningOnScreen';
import { laterParts } from '@/app/_evening/laterParts';
import { AmountField } from '@/app/_fields/AmountField';
import { halfTyped } from '@/app/_fields/formMemory';
import { PickRow } from '@/app/_fields/PickRow';
import { LaterPart } from '@/app/_network/LaterPart';
import { minorWords } from '@/app/_words/orders/minorWords';
import { setAsideWords } from '@/app/_words/stall/count/countWords';
import {
  cashAnswer,
  cashReasonWords,
  coinsWords,
  spentOnWords,
  spentWords,
} from '@/app/_words/stall/evening/moneyWords';
import { slipNames } from '@/app/_words/stall/evening/slipNames';
import { coinsMinor } from '@/lib/stall/evening/dayMoney';
import type { CashReason, EveningAnswers } from '@/lib/stall/evening/eveningAnswers';
import { numberLimits } from '@/shared/limits';
import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import { dayCloseSchema } from '@/shared/schemas/stallPapers';
import styles from './Slips.module.css';
import { Sums } from './Sums';

/** What is in the tin against what should be, and where the difference went. */
export function CashSlip({ on }: Readonly<{ on: EveningOnScreen }>) {
  const { evening, answers, say, locale } = on;
  const { money, plan } = evening;
  const { currency } = plan;
  const { cash } = answers;
  const setCash = (more: Partial<EveningAnswers['cash']>) => say({ cash: { ...cash, ...more } });
  const minor = (amount: number) => minorWords(amount, currency, locale);
  const moved = money.tinMoves + money.spent;
  const differs = money.difference !== null && money.difference !== 0;
  const coins = coinsWords(evening, locale);
  const isLeftOut = money.countedCash === null && money.reason === 'notKnown';
  return (
    <CardSection
      numeral={1}
      id="evening-cash"
      heading={slipNames.cash.heading}
      answer={<Answer words={cashAnswer(evening, locale)} />}
    >
      <Sums
        rows={[
          { name: 'float in the morning', figure: minor(money.float) },
          { name: 'cash sales', figure: minor(money.cash) },
          ...(moved === 0 ? [] : [{ name: moved < 0 ? 'taken out' : 'put in', figure: minor(moved) }]),
          ...evening.count.spentOn.map((one) => ({
            name: spentOnWords(one.words),
            figure: minor(-one.minor),
          })),
          { name: 'should be', figure: minor(money.expectedCash), isSum: true },
          ...(money.countedCash === null ? [] : [{ name: 'counted', figure: minor(money.countedCash) }]),
          ...(differs
            ? [
                {
                  name: money.difference < 0 ? 'short' : 'over',
                  figure: minor(money.difference),
                  isSum: true,
                  isLoss: money.difference < 0,
                },
              ]
            : []),
        ]}
      />
      {evening.count.setAside > 0 && (
        <Advice severity="caution">{setAsideWords(evening.count.setAside)}</Advice>
      )}
      {coins !== null && <p className={styles.quiet}>{coins}</p>}
      {money.spent > 0 && <p className={styles.quiet}>{spentWords}</p>}
      {cash.coins === null && (
        <div className={styles.ask}>
          <AmountField
            label="All that is in the tin"
            currency={currency}
            value={cash.counted === null ? null : fromMinor(cash.counted as MinorUnits, currency)}
            minorLimits={numberLimits(dayCloseSchema, ['money', 'countedCash'])}
            half={halfTyped(on.form, 'cash')}
            onCommit={(value) =>
              setCash({ counted: value === null ? null : toMinor(value, currency), reason: null })
            }
          />
          {cash.counted === null && (
            <Button
              kind={isLeftOut ? 'quiet' : 'plain'}
              onPress={() => setCash({ reason: isLeftOut ? null : 'notKnown', reasonFor: null })}
            >
              {isLeftOut ? 'Count it after all' : 'It is not counted'}
            </Button>
          )}
        </div>
      )}
      {differs && (
        <WhereItWent on={on} onPick={(reason) => setCash({ reason, reasonFor: money.difference })} />
      )}
      <Fold
        summary="Notes and coins"
        line={
          cash.coins === null ? 'count them one by one' : `${minor(coinsMinor(cash.coins, currency))} in all`
        }
        holds={['coin-']}
        isOpenAtFirst={cash.coins !== null}
      >
        <LaterPart
          part={laterParts.coins}
          what="The fields for notes and coins"
          props={{
            on,
            coins: cash.coins,
            onCount: (coins: EveningAnswers['cash']['coins']) => setCash({ coins, reason: null }),
          }}
        />
      </Fold>
    </CardSection>
  );
}

// Helpers

type WhereItWentProps = Readonly<{ on: EveningOnScreen; onPick: (reason: CashReason | null) => void }>;

/** Asked until a close told it of this difference; then it is folded away, and can still be corrected. */
function WhereItWent({ on: { evening, close }, onPick }: WhereItWentProps) {
  const { difference, reason } = evening.money;
  if (difference === null) return null;
  const asked = difference < 0 ? 'Where did it go?' : 'Where does it come from?';
  const told = close?.body.money.difference === difference ? close.body.money.reason : null;
  const pick = (
    <PickRow<CashReason | ''>
      label={asked}
      value={reason ?? ''}
      choices={reasonsOf(difference)}
      onPick={(to) => onPick(to === '' ? null : to)}
    />
  );
  return told === null ? (
    <div className={styles.reasons}>
      <p aria-hidden="true">{asked}</p>
      {pick}
    </div>
  ) : (
    <Fold
      summary={difference < 0 ? 'Where it went' : 'Where it came from'}
      line={cashReasonWords[reason ?? told]}
    >
      {pick}
    </Fold>
  );
}

const reasonsOf = (difference: number) =>
  (difference < 0
    ? (['wrongChange', 'boughtWithIt', 'other', 'notKnown'] as const)
    : (['wrongChange', 'other', 'notKnown'] as const)
  ).map((value) => ({ value, label: cashReasonWords[value] }));
