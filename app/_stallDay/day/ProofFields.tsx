'use client';

import { Attachments } from '@/app/_attachments/Attachments';
import { stallFieldId } from '@/app/_documents/fieldAddress';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { DateField } from '@/app/_fields/DateField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import { proofChoices } from '@/app/_words/stall/dayWords';
import { stallPurposes } from '@/app/_words/stall/stallPurposes';
import type { ProofOf } from '@/lib/stall/days/duesOf';
import type { StallDay } from '@/shared/schemas/stallDay';
import styles from './Day.module.css';

/** Permit and proof of insurance, and the papers themselves. */
export function ProofFields({ on }: Readonly<{ on: StallOnScreen }>) {
  const { stallDay, workspace, id } = on;
  const change = (to: (now: StallDay['attachments']) => StallDay['attachments']) => ({
    ...({ do: 'change', kind: 'stallDay', id } as const),
    to: (now: StallDay): StallDay => ({ ...now, attachments: to(now.attachments) }),
  });
  return (
    <>
      <Proof on={on} of="permit" label="Permit" />
      <Proof on={on} of="insurance" label="Proof of insurance" />
      <h3 className={styles.sub}>Files</h3>
      <div id={stallFieldId(['attachments'])}>
        <Attachments
          attachments={stallDay.attachments}
          purposes={['permission', 'receipt', 'other']}
          words={stallPurposes}
          readFile={workspace.readFile}
          onAdd={(attachment, file) =>
            workspace.editWithFiles(attachment.fileName, [change((now) => [...now, attachment])], [file])
          }
          onRemove={({ fileId, purpose, fileName }) =>
            workspace.edit(`Remove ${fileName}`, [
              change((now) => now.filter((one) => one.fileId !== fileId || one.purpose !== purpose)),
            ])
          }
        />
      </div>
    </>
  );
}

// Helpers

type ProofProps = Readonly<{ on: StallOnScreen; of: ProofOf; label: string }>;

function Proof({ on: { stallDay, set }, of, label }: ProofProps) {
  const { state, until } = stallDay[of];
  return (
    <FieldGroup>
      <ChoiceField
        label={label}
        id={stallFieldId([of])}
        value={state}
        choices={proofChoices}
        onCommit={(to) => set(label, [of, 'state'], to)}
      />
      {state === 'have' && (
        <DateField
          label="Valid until"
          width="narrow"
          value={until}
          onCommit={(to) => set(`${label}, valid until`, [of, 'until'], to)}
        />
      )}
    </FieldGroup>
  );
}
