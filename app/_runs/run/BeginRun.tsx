'use client';

import { useState } from 'react';
import { Advice } from '@/app/_controls/Advice';
import { Button } from '@/app/_controls/Button';
import { RunChanged } from '@/app/_runBook/RunChanged';
import type { RunOnScreen } from '@/app/_runBook/runOnScreen';
import { runTable } from '@/app/_words/making/runs/runTable';
import { notIssuedWords } from '@/app/_words/store/notIssuedWords';
import { saveFailureWords } from '@/app/_words/store/saveFailureWords';
import styles from './Run.module.css';

type Beginning =
  | { readonly kind: 'none' | 'beginning' }
  /** In words of the screen. */
  | { readonly kind: 'notBegun'; readonly why: string };

/** Begins the run: the paper it is held against and the step that says so, and nothing else. */
export function BeginRun({ on }: Readonly<{ on: RunOnScreen }>) {
  const { workspace, id, run, facts, answer, planned, isOld, today } = on;
  const [state, setState] = useState<Beginning>({ kind: 'none' });
  const standard = answer?.standard ?? null;
  const begin = async () => {
    if (standard === null) return;
    setState({ kind: 'beginning' });
    try {
      const outcome = await workspace.issue(`Begin ${run.name}`, {
        kind: 'runStandard',
        about: { kind: 'run', id },
        series: `run ${id}`,
        body: (number) => ({ ...standard, number, issuedOn: today }),
        notes: (standardId) => [
          {
            kind: 'runStep',
            body: { runId: id, standardId, day: today, step: { what: 'begun' } },
          },
        ],
      });
      setState(
        outcome.state === 'issued'
          ? { kind: 'none' }
          : { kind: 'notBegun', why: saveFailureWords[outcome.why] },
      );
    } catch (error) {
      setState({ kind: 'notBegun', why: notIssuedWords(error) });
    }
  };
  const blockedBy =
    state.kind === 'beginning'
      ? runTable.beginning
      : planned === null || standard === null
        ? runTable.beginWaits
        : isOld
          ? runTable.beginOld
          : undefined;
  return (
    <div className={styles.stack}>
      {facts.otherStandards.length > 0 && <Advice severity="caution">{runTable.several}</Advice>}
      {facts.standard !== null && <RunChanged {...{ workspace }} frozen={facts.standard.body} />}
      {!facts.isBegun && (
        <>
          <div className={styles.ends}>
            <Button
              kind="strong"
              blockedBy={blockedBy}
              describedBy={`${id}-begin-told`}
              onPress={() => void begin()}
            >
              {runTable.begin}
            </Button>
          </div>
          <p id={`${id}-begin-told`} role="status" className={styles.quiet}>
            {state.kind === 'notBegun' ? runTable.notBegun(state.why) : runTable.beginTold}
          </p>
        </>
      )}
    </div>
  );
}
