'use client';

import { useMemo } from 'react';
import { useNow } from '@/app/_clock/useNow';
import { wallAt } from '@/app/_clock/wallAt';
import { ButtonLink } from '@/app/_controls/ButtonLink';
import { LaterPart } from '@/app/_network/LaterPart';
import { laterParts } from '@/app/_runs/run/laterParts';
import styles from '@/app/_runs/run/Run.module.css';
import { clockWords } from '@/app/_words/clockWords';
import { closedWords, progressWords } from '@/app/_words/making/runs/progressWords';
import { type RunAnswerLine, runAnswerWords } from '@/app/_words/making/runs/runAnswerWords';
import { runTable } from '@/app/_words/making/runs/runTable';
import { frozenPlan } from '@/lib/making/standard/frozenPlan';
import { resultOfRun } from '@/lib/variances/resultOfRun';
import { sharedHours } from '@/lib/variances/sharedHours';
import { stateWords } from '../stateWords';
import type { BegunOnScreen } from './begunOnScreen';

/** How far a run is that was begun, and what came of it once it is closed. */
export function BegunPlate({ on }: Readonly<{ on: BegunOnScreen }>) {
  const { facts, id, pressed } = on;
  const line = useAnswer(on);
  const isOver = facts.isClosed || (pressed.current === null && pressed.pressed.length > 0);
  return (
    <section className={styles.plate} aria-label={runTable.plate}>
      <div className={styles.told}>
        <p className={styles.answer}>
          <strong>{line.key}</strong>
          {line.after}
        </p>
        <p className={styles.quiet}>{stateWords(on)}</p>
      </div>
      <div className={styles.ends}>
        <ButtonLink kind={isOver ? 'plain' : 'strong'} href={`/making/${id}/press`}>
          {runTable.press}
        </ButtonLink>
        <ButtonLink kind={isOver ? 'strong' : 'plain'} href={`/making/${id}/after`}>
          {runTable.after}
        </ButtonLink>
      </div>
      <LaterPart part={laterParts.begin} what="What is told of the standard" props={{ on }} />
      <LaterPart
        part={laterParts.causes}
        what="What nobody named"
        props={{ workspace: on.workspace, facts, frozen: on.standard }}
      />
      {!facts.isClosed && (
        <LaterPart
          part={laterParts.clock}
          what="The clock of the run"
          props={{ workspace: on.workspace, runId: id, locale: on.locale }}
        />
      )}
    </section>
  );
}

// Helpers

/** Whoever has not tapped for so long is not at the press, and no time can be told. */
const AT_THE_PRESS_MS = 60 * 60_000;

function useAnswer({ facts, standard, pressed, workspace, formatter, locale }: BegunOnScreen): RunAnswerLine {
  const now = useNow(false);
  const { entries, papers } = workspace;
  const result = useMemo(() => {
    if (!facts.isClosed) return null;
    return resultOfRun(facts, entries.goodsIn, sharedHours(entries.hours, papers.runStandard));
  }, [facts, entries.goodsIn, entries.hours, papers.runStandard]);
  if (result !== null) return closedWords(result, pressed, formatter, locale);
  const last = pressed.pressed.at(-1);
  if (last === undefined) {
    const plan = frozenPlan(standard);
    return runAnswerWords(plan, plan.pieces, formatter, locale);
  }
  const minutes = pressed.current?.minutesToGo ?? 0;
  const isAtPress = now - last.at < AT_THE_PRESS_MS;
  return progressWords(
    pressed,
    isAtPress ? clockWords(wallAt(now + minutes * 60_000).minute, locale) : null,
    formatter,
  );
}
