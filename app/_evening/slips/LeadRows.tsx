'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { ButtonLink } from '@/app/_controls/ButtonLink';
import type { EveningOnScreen } from '@/app/_evening/eveningOnScreen';
import { formMemory } from '@/app/_fields/formMemory';
import { freshEnquiry } from '@/app/_orders/enquiryDraft';
import { noteEnquiry } from '@/app/_orders/noteEnquiry';
import { leadWords } from '@/app/_words/stall/evening/resultWords';
import { z } from '@/shared/schemas/z';
import styles from './Slips.module.css';

/** Who wants something made, each an enquiry by one press. */
export function LeadRows({ on }: Readonly<{ on: EveningOnScreen }>) {
  const { leads } = on.evening.count;
  return leads.length === 0 ? null : (
    <ul className={styles.lessons}>
      {leads.map(({ id, words }) => (
        <LeadRow key={id} {...{ on, id, words }} />
      ))}
    </ul>
  );
}

// Helpers

function LeadRow({ on, id, words }: Readonly<{ on: EveningOnScreen; id: string; words: string }>) {
  const { workspace, evening, today } = on;
  const form = { orderId: evening.plan.stallDayId, name: 'leads', isErased: false };
  const [orderId, setOrderId] = useState(
    () => z.string().safeParse(formMemory.recall(form, id)).data ?? null,
  );
  const what = leadWords(words);
  const isThere = orderId !== null && workspace.kinds.order.bodies[orderId] !== undefined;
  const make = () => {
    const asked = { ...freshEnquiry, what: words, heardFrom: evening.plan.title };
    const made = noteEnquiry(workspace, words === '' ? { ...asked, what } : asked, null, today);
    if (made === null) return;
    formMemory.remember(form, id, made);
    setOrderId(made);
  };
  return (
    <li>
      <p>
        {what}
        <span className={styles.why}>wants something made</span>
      </p>
      {isThere ? (
        <ButtonLink href={`/orders/${orderId}`} spoken={`Open the enquiry: ${what}`}>
          Open the enquiry
        </ButtonLink>
      ) : (
        <Button spoken={`Make an enquiry: ${what}`} onPress={make}>
          Make an enquiry
        </Button>
      )}
    </li>
  );
}
