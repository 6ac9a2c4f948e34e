'use client';

import { Button } from '@/app/_controls/Button';
import { CardSection } from '@/app/_controls/CardSection';
import { Fold } from '@/app/_controls/Fold';
import { focusById } from '@/app/_controls/focusById';
import { Answer } from '@/app/_docket/common/Answer';
import { LaterPart } from '@/app/_network/LaterPart';
import { laterParts } from '@/app/_order/laterParts';
import { useOpenForm } from '@/app/_order/notes/useOpenForm';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import { depositCover, lowestWords, moneyAnswer } from '@/app/_words/orders/money/orderMoneyWords';
import { paymentsOf } from '@/lib/orders/money/payments';
import { settlement, toGiveBackMinor } from '@/lib/orders/money/settlement';
import styles from './Money.module.css';
import { MoneyFigures } from './MoneyFigures';
import { OtherMoney } from './OtherMoney';
import { PaymentList } from './PaymentList';
import { SpentList } from './SpentList';

const ID = 'order-money';

/** What it comes to, what came, what was spent for it, and how far the maker’s own money is in it. */
export function MoneySection({ on }: Readonly<{ on: OrderOnScreen }>) {
  const { standing, today, locale, formatter } = on;
  const { money } = standing;
  const payments = paymentsOf(on.facts.happened);
  const { open, show, formOf } = useOpenForm(on, 'money');
  const payouts = useOpenForm(on, 'payout', (id) => payments.some(({ entry }) => entry.id === id));
  const close = () => {
    show(null);
    focusById(`${ID}-heading`);
  };
  const cover = depositCover(money, locale);
  const left = settlement(standing);
  const backMinor = toGiveBackMinor(standing);
  const dueMinor = backMinor || (left === null ? money.depositOpenMinor || money.dueMinor : left.openMinor);
  return (
    <CardSection
      numeral={null}
      heading="Money"
      id={ID}
      answer={<Answer words={moneyAnswer(money, left, locale)} />}
    >
      <MoneyFigures {...{ money, left, locale }} />
      {cover !== null && <p className={cover.isShort ? styles.caution : styles.quiet}>{cover.sentence}</p>}
      {isAhead(on) && <LaterPart part={laterParts.blanksAhead} what="What blanks will cost" props={{ on }} />}
      <div className={styles.acts}>
        <Button expanded={open === 'payment'} onPress={() => show(open === 'payment' ? null : 'payment')}>
          A payment
        </Button>
        <Button expanded={open === 'expense'} onPress={() => show(open === 'expense' ? null : 'expense')}>
          Money spent
        </Button>
      </div>
      {open === 'payment' && (
        <LaterPart
          part={laterParts.payment}
          what="The form"
          props={{
            ...{ on, dueMinor, form: formOf('payment'), onDone: close, onLeave: close },
            kind: backMinor > 0 ? ('refund' as const) : ('payment' as const),
          }}
        />
      )}
      {open === 'expense' && (
        <LaterPart
          part={laterParts.expense}
          what="The form"
          props={{
            ...{ on, orderId: on.orderId, currency: money.currency, form: formOf('expense') },
            ...{ onDone: close, onLeave: close },
          }}
        />
      )}
      <OtherMoney money={money} locale={locale} />
      {payments.length > 0 && (
        <Fold
          summary="Payments"
          line={formatter.count(payments.length, 'entry', 'entries')}
          isOpenAtFirst={payouts.open !== null}
        >
          <PaymentList {...{ on, payments }} forms={payouts} />
        </Fold>
      )}
      {money.spent.length + money.unpriced.length > 0 && (
        <Fold summary="What was spent" line={formatter.count(money.spent.length, 'entry', 'entries')}>
          <SpentList on={on} />
        </Fold>
      )}
      {money.exposure.points.length > 0 && (
        <Fold
          summary="Your own money in it"
          line={lowestWords(money.exposure, money.currency, today, locale)}
        >
          <LaterPart
            part={laterParts.exposure}
            what="The drawing of your own money"
            props={{ exposure: money.exposure, currency: money.currency, today, locale }}
          />
        </Fold>
      )}
    </CardSection>
  );
}

// Helpers

/** A quote is out, and its blanks are still to be ordered. */
const isAhead = ({ standing: { state, side, money } }: OrderOnScreen): boolean =>
  side.side === 'open' && money.blanksMinor === 0 && ['quoted', 'accepted', 'ready'].includes(state);
