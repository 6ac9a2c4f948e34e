'use client';

import { useEffect, useState } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import { CheckField } from '@/app/_fields/CheckField';
import { formMemory } from '@/app/_fields/formMemory';
import { intakeMemory } from '@/app/_names/intakeMemory';
import { eraseFailedWords, erasureWords } from '@/app/_words/customers/erasureWords';
import styles from './Customers.module.css';
import type { CustomerFields } from './customerFields';
import { type ErasureLeaves, erasureLeaves, ordersOf } from './erasureLeaves';

type Step =
  | { readonly at: 'offered' }
  | { readonly at: 'told'; readonly leaves: ErasureLeaves }
  | { readonly at: 'erasing' }
  | { readonly at: 'failed'; readonly why: string };

const TOLD = 'customer-erasing';

/**
 * Erasing for good, for a customer who asks: what goes, stays and cannot be reached is told first, and has to be said to
 * be read.
 */
export function EraseOnRequest({
  fields: { workspace, customerId, customer },
}: Readonly<{ fields: CustomerFields }>) {
  const today = useToday();
  const [step, setStep] = useState<Step>({ at: 'offered' });
  const [isRead, setRead] = useState(false);
  const isTold = step.at === 'told';
  useEffect(() => {
    if (isTold) focusById(TOLD);
  }, [isTold]);
  const tell = () => {
    const leaves = erasureLeaves(workspace, customerId, today);
    setRead(false);
    setStep(leaves === null ? { at: 'failed', why: eraseFailedWords(null) } : { at: 'told', leaves });
  };
  const erase = async () => {
    setStep({ at: 'erasing' });
    const orderIds = ordersOf(customerId, workspace);
    const outcome = await workspace.erase(customerId, today);
    if (outcome.state === 'erased') {
      intakeMemory.forgetOrders(orderIds);
      formMemory.forgetOrders(orderIds);
    }
    // Where it went well this part of the page is gone by now.
    if (outcome.state === 'notKept') setStep({ at: 'failed', why: eraseFailedWords(outcome.why) });
    if (outcome.state === 'noSuchCustomer') setStep({ at: 'failed', why: eraseFailedWords(null) });
  };
  if (step.at !== 'told')
    return (
      <div>
        <p className={styles.words}>
          Erased, everything personal goes for good, as somebody may ask of you. What that means is told
          first.
        </p>
        {step.at === 'failed' && (
          <p className={styles.wrong} role="alert">
            {step.why}
          </p>
        )}
        <Button
          kind="quiet"
          blockedBy={step.at === 'erasing' ? 'It is being erased.' : undefined}
          onPress={tell}
        >
          {step.at === 'erasing' ? 'Erasing…' : 'Erase on request'}
        </Button>
      </div>
    );
  return (
    <section className={styles.erasing} id={TOLD} tabIndex={-1} aria-label="Erase on request">
      <h3 className={styles.sub}>Before it is erased</h3>
      <ul className={styles.told}>
        {erasureWords({ name: customer.name, ...step.leaves }).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <CheckField label="I have read this, and they asked for it" checked={isRead} onCommit={setRead} />
      <div className={styles.ends}>
        <Button
          blockedBy={isRead ? undefined : 'Tick that you have read it first.'}
          onPress={() => void erase()}
        >
          Erase for good
        </Button>
        <Button kind="quiet" onPress={() => setStep({ at: 'offered' })}>
          Keep them
        </Button>
      </div>
    </section>
  );
}
