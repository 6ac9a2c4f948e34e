'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { printsText, refillText } from '@/app/_words/workshop/inkWords';
import type { WorkshopFields } from '@/app/_workshop/workshopFields';
import type { InkPrints, InkRefill } from '@/shared/schemas/entries';
import styles from './InkRecord.module.css';
import { InkRefillFields } from './InkRefillFields';
import { InkRunFields } from './InkRunFields';

/** Something noted of ink, as the entry says it. */
export type InkNoted =
  | { readonly kind: 'inkRefill'; readonly id: string; readonly body: InkRefill }
  | { readonly kind: 'inkPrints'; readonly id: string; readonly body: InkPrints };

type NewInkEntry =
  | { readonly kind: 'inkRefill'; readonly body: InkRefill }
  | { readonly kind: 'inkPrints'; readonly body: InkPrints };

type InkEntryRowProps = Readonly<{
  fields: WorkshopFields;
  noted: InkNoted;
  /** Days on which prints are noted. */
  printDays: ReadonlySet<string>;
  /** Its prints are far from explaining it. */
  isFarOff: boolean;
  /** Told what it is called. */
  onTakeBack: (name: string) => void;
  onCorrected: () => void;
}>;

/** One entry, which can be taken back, or corrected: then the wrong one is taken back and the right one noted. */
export function InkEntryRow({
  fields,
  noted,
  printDays,
  isFarOff,
  onTakeBack,
  onCorrected,
}: InkEntryRowProps) {
  const { workspace, workshop } = fields;
  const formatter = formatterFor(useTextContext());
  const [isOpen, setOpen] = useState(false);
  const day = formatter.day(noted.body.day);
  const what = noted.kind === 'inkRefill' ? 'Refill' : noted.body.name;
  const name = `${what} of ${day}`;
  const correct = (right: NewInkEntry) => {
    const outcome = workspace.note(`Correct ${name}`, [
      { kind: 'takeBack', body: { entryId: noted.id } },
      right,
    ]);
    if (outcome.state === 'shown') onCorrected();
    return outcome;
  };
  const common = { label: `Correct ${name}`, submit: 'Put it right' } as const;
  return (
    <li className={styles.entry}>
      <span className={styles.day}>{day}</span>
      <span className={styles.what}>
        <strong>{what}</strong>{' '}
        {noted.kind === 'inkRefill'
          ? refillText(noted.body, workshop, formatter)
          : printsText(noted.body, formatter)}
        {isFarOff && <em className={styles.far}> far from what its prints explain</em>}
      </span>
      <span>
        <Button kind="quiet" onPress={() => setOpen(!isOpen)}>
          {isOpen ? 'Close' : 'Correct'} <span className="visuallyHidden">{name}</span>
        </Button>{' '}
        <Button kind="quiet" onPress={() => onTakeBack(name)}>
          Take back <span className="visuallyHidden">{name}</span>
        </Button>
      </span>
      {isOpen && (
        <div className={styles.correction}>
          {noted.kind === 'inkRefill' ? (
            <InkRefillFields
              {...common}
              first={noted.body}
              printDays={printDays}
              onNote={(body) => correct({ kind: 'inkRefill', body })}
            />
          ) : (
            <InkRunFields
              {...common}
              first={noted.body}
              onNote={(body) => correct({ kind: 'inkPrints', body })}
            />
          )}
        </div>
      )}
    </li>
  );
}
