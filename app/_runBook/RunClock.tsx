'use client';

import { useState } from 'react';
import { dayOf } from '@/app/_clock/dayOf';
import { useNow } from '@/app/_clock/useNow';
import { wallAt } from '@/app/_clock/wallAt';
import { Button } from '@/app/_controls/Button';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { NumberField } from '@/app/_fields/NumberField';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { elementNames } from '@/app/_words/elementNames';
import { clockTable, nightWords, runningWords } from '@/app/_words/making/runs/clockWords';
import { notNotedWords } from '@/app/_words/orders/notes/orderNoteWords';
import { WHOLE_NIGHT_MINUTES } from '@/lib/variances/actualTroubles';
import { numberLimits } from '@/shared/limits';
import { hoursSchema, type WorkElement, workElements } from '@/shared/schemas/making/runEvents';
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
  const [asked, setAsked] = useState<number | null>(null);
  const [told, setTold] = useState('');
  const keep = (clock: RunningClock | null) => {
    const isKept = clockMemory.remember(runId, clock);
    setRunning(clock);
    setAsked(null);
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
        <AskedTime {...{ asked, locale }} onEnter={enter} onDrop={() => keep(null)} />
      )}
      <p role="status">{told}</p>
    </section>
  );
}

// Helpers

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
  asked: number;
  locale: string;
  onEnter: (minutes: number) => void;
  onDrop: () => void;
}>;

function AskedTime({ asked, locale, onEnter, onDrop }: AskedTimeProps) {
  const limits = numberLimits(hoursSchema, ['minutes']);
  const most = limits.max ?? Number.POSITIVE_INFINITY;
  const [minutes, setMinutes] = useState<number | null>(asked < 0 || asked > most ? null : asked);
  const missing = minutes === null ? clockTable.missing : undefined;
  return (
    <EntryForm
      label={clockTable.label}
      className={styles.asked}
      missing={missing}
      onEnter={() => minutes !== null && onEnter(minutes)}
    >
      <p className={styles.night}>{nightWords(asked, locale)}</p>
      <NumberField
        label={clockTable.time}
        unit="min"
        value={minutes}
        {...limits}
        width="narrow"
        onCommit={setMinutes}
      />
      <Button type="submit" blockedBy={missing}>
        {clockTable.note}
      </Button>
      <Button kind="quiet" onPress={onDrop}>
        {clockTable.drop}
      </Button>
    </EntryForm>
  );
}
