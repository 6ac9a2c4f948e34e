'use client';

import { Button } from '@/app/_controls/Button';
import { newId } from '@/app/_documents/newId';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { EnteredTogether } from '@/app/_fields/enteredTogether';
import { formMemory, halfTyped } from '@/app/_fields/formMemory';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import { PaperDesk } from '@/app/_orderPapers/issuing/PaperDesk';
import styles from '@/app/_orderPapers/OrderPapers.module.css';
import { TabHead } from '@/app/_orderPapers/TabHead';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { creditProblemWords } from '@/app/_words/orders/papers/creditProblemWords';
import { creditAnswer } from '@/app/_words/orders/papers/followingWords';
import { billsOf, leftOf } from '@/lib/orders/bills';
import { creditNoteOf } from '@/lib/quotes/following/creditNoteOf';
import { numberLimits, textLimits } from '@/shared/limits';
import { fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import { seriesNumberText } from '@/shared/orderNumberText';
import { orderSchema } from '@/shared/schemas/order';
import { creditNoteSchema } from '@/shared/schemas/orderPapers';
import { currencyDigits } from '@/shared/tables/currencies';
import type { CreditLine, FollowingTabProps } from './paperChoices';
import { creditForm } from './usePaperChoices';

/** Gives back an invoice, whole or in part. */
export function CreditNoteTab({ of, isNext, choices, onChoose }: FollowingTabProps) {
  const { locale, today } = of;
  const form = creditForm(of.orderId, (of.customer?.erasedOn ?? null) !== null);
  const invoices = billsOf(of.facts.happened).toReversed();
  const chosen = invoices.find(({ paper }) => paper.id === choices.invoiceId) ?? invoices[0];
  if (chosen === undefined) {
    return (
      <PaperDesk
        {...{ of, isNext }}
        kind="creditNote"
        paper={null}
        blockedBy="No invoice is in force. A credit note gives back one that went out."
      />
    );
  }
  const { paper } = chosen;
  const left = leftOf(chosen);
  const { currency, tax } = paper.body;
  const { mode } = tax;
  const words = (minor: number) => minorMoney(minor, currency, locale);
  const number = seriesNumberText(paper.number, paper.body.issuedOn);
  const why = choices.creditWhy.trim();
  const lines = choices.creditLines.map(({ what, amount }) => ({
    what: what.trim(),
    amount: amount === null ? 0 : toMinor(amount, currency),
  }));
  const isNamed = lines.every(({ what }) => what !== '');
  const made = creditNoteOf(
    { paperId: paper.id, invoice: paper.body, left, why, lines },
    { number: { count: 1, letter: null }, day: today },
  );
  const note = made.ok && why !== '' && isNamed ? made.value : null;
  const setLine = (id: string, change: Partial<CreditLine>) =>
    onChoose({
      creditLines: choices.creditLines.map((line) => (line.id === id ? { ...line, ...change } : line)),
    });
  const add = (line: Omit<CreditLine, 'id'>) =>
    onChoose({ creditLines: [...choices.creditLines, { id: newId(), ...line }] });
  const whole = fromMinor(left.subtotal as MinorUnits, currency);
  return (
    <>
      <TabHead answer={creditAnswer({ left, mode, number }, words)}>
        {invoices.length > 1 && (
          <ChoiceField
            label="Of which invoice"
            value={paper.id}
            choices={invoices.map(({ paper: one }) => ({
              value: one.id,
              label: seriesNumberText(one.number, one.body.issuedOn),
            }))}
            onCommit={(invoiceId) => onChoose({ invoiceId })}
          />
        )}
        <TextField
          label="Why"
          value={choices.creditWhy}
          longest={textLimits(creditNoteSchema, ['why']).longest}
          width="full"
          half={halfTyped(form, 'why')}
          hint="It stands on the paper."
          onCommit={(creditWhy) => onChoose({ creditWhy })}
        />
        <EnteredTogether value>
          {choices.creditLines.map(({ id, what, amount }) => (
            <div key={id} className={styles.line}>
              <TextField
                label="What"
                value={what}
                half={halfTyped(form, `what ${id}`)}
                longest={textLimits(creditNoteSchema, ['lines', 0, 'what']).longest}
                onCommit={(to) => setLine(id, { what: to })}
              />
              <NumberField
                label="Amount"
                unit={currency}
                value={amount}
                half={halfTyped(form, `amount ${id}`)}
                {...numberLimits(orderSchema, ['discount', 'amount'])}
                minDecimals={currencyDigits(currency) ?? 0}
                hint={mode === 'added' ? 'Without tax, as on the invoice.' : undefined}
                onCommit={(to) => setLine(id, { amount: to })}
              />
              <Button
                kind="quiet"
                spoken={`Take off ${what}`}
                onPress={() =>
                  onChoose({ creditLines: choices.creditLines.filter((line) => line.id !== id) })
                }
              >
                Take off
              </Button>
            </div>
          ))}
        </EnteredTogether>
        <div className={styles.acts}>
          <Button onPress={() => add({ what: '', amount: null })}>Add a part</Button>
          <Button
            blockedBy={left.subtotal <= 0 ? 'All of it was given back.' : undefined}
            onPress={() =>
              onChoose({ creditLines: [{ id: newId(), what: `Invoice ${number}`, amount: whole }] })
            }
          >
            All that is left of it
          </Button>
        </div>
      </TabHead>
      <PaperDesk
        {...{ of, isNext }}
        kind="creditNote"
        onIssued={() => {
          formMemory.forget(form);
          onChoose({ creditWhy: '', creditLines: [] });
        }}
        paper={note === null ? null : { kind: 'creditNote', bodyOf: (to) => ({ ...note, number: to }) }}
        blockedBy={
          made.ok
            ? why === ''
              ? 'Write down why it is given back.'
              : 'Say what each part is for.'
            : creditProblemWords(made.problem, { currency, locale, mode })
        }
      />
    </>
  );
}
