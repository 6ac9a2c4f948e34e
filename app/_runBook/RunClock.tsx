'use client';

import { useState } from 'react';
import { dayOf } from '@/app/_clock/dayOf';
import { useNow } from '@/app/_clock/useNow';
import { wallAt } from '@/app/_clock/wallAt';
import { Button } from '@/app/_controls/Button';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { formMemory, type OrderForm } from '@/app/_fields/formMemory';
import { NumberField } from '@/app/_fields/NumberField';
import { useTyped, useTypedNumber } from '@/app/_fields/useTyped';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { elementNames } from '@/app/_words/elementNames';
import { clockTable, nightWords, runningWords } from '@/app/_words/making/runs/clockWords';
import { notNotedWords } from '@/app/_words/orders/notes/orderNoteWords';
import { WHOLE_NIGHT_MINUTES } from '@/lib/variances/actualTroubles';
import { numberLimits } from '@/shared/limits';
import { hoursSchema, type WorkElement, workElements } from '@/shared/schemas/making/runEvents';
import { z } from '@/shared/schemas/z';
import { clockMemory, type RunningClock } from './clockMemory';
import styles from './RunClock.module.css';

type RunClockProps = Readonly<{
  workspace: Pick<ReadyWorkspace, 'note'>;
  runId: string;
  locale: string;
}>;

const elements = workElements.map((value) => ({ value, label: elementNames[value] }));
const MINUTE_MS = 60_000;

/** A clock for one element of a run's work: it goes on through a reload, and a whole night is asked about. */
export function RunClock({ workspace, runId, locale }: RunClockProps) {
  const [running, setRunning] = useState(() => clockMemory.recall(runId));
  const [element, setElement] = useState<WorkElement>('presses');
  const form = formOf(runId, running);
  // Asked once, it is asked after a reload too, with what was typed.
  const [asked, setAsked] = useTyped(form, 'asked', z.number().nullable(), null);
  const [told, setTold] = useState('');
  const keep = (clock: RunningClock | null) => {
    const isKept = clockMemory.remember(runId, clock);
    setRunning(clock);
    setAsked(null);
    formMemory.forget(form);
    setTold(isKept ? '' : clockTable.notKept);
  };
  const enter = (minutes: number) => {
    if (running === null) return;
    const outcome = workspace.note(elementNames[running.element], [
      {
        kind: 'hours',
        body: {
          ...{ day: dayOf(new Date(running.startedAt)), minutes, for: { kind: 'run', id: runId } },
          ...{ element: running.element, placementId: null, pieces: null, from: 'clock', note: '' },
        },
      },
    ]);
    if (outcome.state === 'shown') keep(null);
    else setTold(notNotedWords(outcome.state));
  };
  const stop = () => {
    if (running === null) return;
    const minutes = Math.round((Date.now() - running.startedAt) / (MINUTE_MS / 10)) / 10;
    if (minutes < 0 || minutes >= WHOLE_NIGHT_MINUTES) setAsked(minutes);
    else if (minutes === 0) {
      keep(null);
      setTold(clockTable.nothing);
    } else enter(minutes);
  };
  return (
    <section className={styles.clock} aria-label={clockTable.name}>
      {running === null ? (
        <>
          <ChoiceField label={clockTable.work} value={element} choices={elements} onCommit={setElement} />
          <Button onPress={() => keep({ element, startedAt: Date.now() })}>{clockTable.start}</Button>
        </>
      ) : asked === null ? (
        <>
          <Running {...{ running, locale }} />
          <Button kind="strong" onPress={stop}>
            {clockTable.stop}
          </Button>
          <Button kind="quiet" onPress={() => keep(null)}>
            {clockTable.drop}
          </Button>
        </>
      ) : (
        <AskedTime {...{ asked, locale, form }} onEnter={enter} onDrop={() => keep(null)} />
      )}
      <p role="status">{told}</p>
    </section>
  );
}

// Helpers

/** What is asked belongs to one start of the clock: another one is asked anew. */
const formOf = (runId: string, running: RunningClock | null) => ({
  ...{ orderId: runId, isErased: false },
  name: `clock asked ${running?.startedAt ?? ''}`,
});

function Running({ running, locale }: Readonly<{ running: RunningClock; locale: string }>) {
  const now = useNow(false);
  const { element, startedAt } = running;
  return (
    <p className={styles.running}>
      {runningWords(element, wallAt(startedAt).minute, (now - startedAt) / MINUTE_MS, locale)}
    </p>
  );
}

type AskedTimeProps = Readonly<{
  form: OrderForm;
  asked: number;
  locale: string;
  onEnter: (minutes: number) => void;
  onDrop: () => void;
}>;

function AskedTime({ form, asked, locale, onEnter, onDrop }: AskedTimeProps) {
  const limits = numberLimits(hoursSchema, ['minutes']);
  const most = limits.max ?? Number.POSITIVE_INFINITY;
  const time = useTypedNumber(form, 'minutes', asked < 0 || asked > most ? null : asked);
  const minutes = time.value;
  const missing = minutes === null ? clockTable.missing : undefined;
  return (
    <EntryForm
      label={clockTable.label}
      className={styles.asked}
      missing={missing}
      onEnter={() => minutes !== null && onEnter(minutes)}
    >
      <p className={styles.night}>{nightWords(asked, locale)}</p>
      <NumberField label={clockTable.time} unit="min" {...time} {...limits} width="narrow" />
      <Button type="submit" blockedBy={missing}>
        {clockTable.note}
      </Button>
      <Button kind="quiet" onPress={onDrop}>
        {clockTable.drop}
      </Button>
    </EntryForm>
  );
}
