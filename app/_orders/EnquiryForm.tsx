'use client';

import { useEffect, useId, useMemo, useRef, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import { DateField } from '@/app/_fields/DateField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { TextField } from '@/app/_fields/TextField';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { formatterFor } from '@/app/_words/formatter';
import { NOT_TAKEN, whoWords } from '@/app/_words/orders/board/enquiryWords';
import { usableLocale } from '@/app/_words/usableLocale';
import { foldedText, isFound } from '@/lib/drafts/jobSearch';
import styles from './EnquiryForm.module.css';
import { type EnquiryDraft, judgedEnquiry } from './enquiryDraft';
import { customersCalled, noteEnquiry } from './noteEnquiry';

type EnquiryFormProps = Readonly<{
  draft: EnquiryDraft;
  /** How often it was asked for; 0 where it stands open from before a reload. */
  asked: number;
  workspace: ReadyWorkspace;
  today: string;
  onChange: (draft: EnquiryDraft) => void;
  onNoted: (orderId: string) => void;
  /** What is typed stays, and is there when the form is opened again. */
  onClose: () => void;
  onEmpty: () => void;
}>;

/** Who asks, for what, how many, when: typed in twenty seconds, and an order from then on. */
export function EnquiryForm(props: EnquiryFormProps) {
  const { draft, asked, workspace, today, onChange, onNoted, onClose, onEmpty } = props;
  const { customers, orders, workshop } = workspace;
  const first = useId();
  const [isRefused, setRefused] = useState(false);
  const isNoted = useRef(false);
  useEffect(() => {
    if (asked > 0) focusById(first);
  }, [asked, first]);
  const names = useMemo(
    () => [
      ...new Set(Object.values(customers).flatMap(({ name, erasedOn }) => (erasedOn === null ? [name] : []))),
    ],
    [customers],
  );
  const { who, what, pieces, wantedOn, heardFrom } = draft;
  const offered = who.trim() === '' ? names : names.filter((name) => isFound(foldedText(name), who));
  const { issues, missing, askedPieces } = judgedEnquiry(
    draft,
    today,
    usableLocale(workshop.locale),
    formatterFor(workshop),
  );
  const called = customersCalled(who, workspace);
  const set = (change: Partial<EnquiryDraft>) => onChange({ ...draft, ...change });
  const save = () => {
    // A second press before the order is opened makes no second order.
    if (isNoted.current) return;
    const id = noteEnquiry(workspace, draft, askedPieces, today);
    setRefused(id === null);
    if (id === null) return;
    isNoted.current = true;
    onNoted(id);
  };
  return (
    <section className={styles.card} aria-labelledby={`${first}-heading`}>
      <h2 className={styles.heading} id={`${first}-heading`}>
        New enquiry
      </h2>
      <EntryForm className={styles.form} label="New enquiry" missing={missing} onEnter={save}>
        <FieldGroup>
          <TextField
            id={first}
            label="Who asks"
            value={who}
            suggestions={offered.slice(0, OFFERED)}
            hint={
              who.trim() === ''
                ? undefined
                : whoWords(called.length, orders.filter(({ order }) => order.customerId === called[0]).length)
            }
            issue={issues.who}
            onCommit={(to) => set({ who: to })}
          />
          <TextField
            label="What they want"
            value={what}
            issue={issues.what}
            onCommit={(to) => set({ what: to })}
          />
        </FieldGroup>
        <FieldGroup pairs>
          <TextField
            label="How many"
            width="narrow"
            value={pieces}
            inputMode="numeric"
            issue={issues.pieces}
            onCommit={(to) => set({ pieces: to })}
          />
          <DateField
            label="Wanted on"
            width="narrow"
            value={wantedOn}
            issue={issues.wantedOn}
            onCommit={(to) => set({ wantedOn: to })}
          />
          <TextField
            label="Heard of you from"
            value={heardFrom}
            issue={issues.heardFrom}
            onCommit={(to) => set({ heardFrom: to })}
          />
        </FieldGroup>
        <div className={styles.acts}>
          <Button type="submit" kind="strong" blockedBy={missing}>
            Note it
          </Button>
          <Button kind="quiet" onPress={onClose}>
            Not now
          </Button>
          <Button kind="quiet" onPress={onEmpty}>
            Empty the form
          </Button>
        </div>
        <p className={styles.told} role="status">
          {isRefused ? NOT_TAKEN : (missing ?? 'Everything else can be added in the order.')}
        </p>
      </EntryForm>
    </section>
  );
}

// Helpers

/** More than these nobody reads through; the next letter leaves fewer. */
const OFFERED = 30;
