'use client';

import { Button } from '@/app/_controls/Button';
import { ButtonLink } from '@/app/_controls/ButtonLink';
import type { EveningOnScreen } from '@/app/_evening/eveningOnScreen';
import { freshEnquiry } from '@/app/_orders/enquiryDraft';
import { bringBackEnquiry, noteEnquiry } from '@/app/_orders/noteEnquiry';
import { WAITING_ID } from '@/app/_store/happenedState';
import { leadWords } from '@/app/_words/stall/evening/resultWords';
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

/** The same on every device that makes an enquiry of a lead, so that no two come of it. */
const leadOrderId = (tapId: string): string => `lead-${tapId}`;

function LeadRow({ on, id, words }: Readonly<{ on: EveningOnScreen; id: string; words: string }>) {
  const { workspace, evening, today } = on;
  const orderId = leadOrderId(id);
  const what = leadWords(words);
  const isThere = workspace.kinds.order.bodies[orderId] !== undefined;
  const wasThere = workspace.removed.some((document) => document.id === orderId);
  const make = () => {
    if (wasThere) return bringBackEnquiry(workspace, orderId, `Enquiry: ${what}`, today);
    const asked = { ...freshEnquiry, what: words, heardFrom: evening.plan.title };
    noteEnquiry(workspace, words === '' ? { ...asked, what } : asked, null, today, orderId);
  };
  return (
    <li>
      <p>
        {what}
        {words !== '' && <span className={styles.why}>wants something made</span>}
      </p>
      {isThere ? (
        <ButtonLink href={`/orders/${orderId}`} spoken={`Open the enquiry: ${what}`}>
          Open the enquiry
        </ButtonLink>
      ) : (
        <Button
          spoken={`${wasThere ? 'Bring the enquiry back' : 'Make an enquiry'}: ${what}`}
          blockedBy={id.startsWith(WAITING_ID) ? 'It is not kept yet.' : undefined}
          onPress={make}
        >
          {wasThere ? 'Bring it back' : 'Make an enquiry'}
        </Button>
      )}
    </li>
  );
}
