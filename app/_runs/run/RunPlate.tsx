import { ButtonLink } from '@/app/_controls/ButtonLink';
import { LaterPart } from '@/app/_network/LaterPart';
import type { RunOnScreen } from '@/app/_runBook/runOnScreen';
import { runAnswerWords } from '@/app/_words/making/runs/runAnswerWords';
import { runTable } from '@/app/_words/making/runs/runTable';
import { laterParts } from './laterParts';
import styles from './Run.module.css';
import { stateWords } from './stateWords';

/** What a run comes to, how it stands, and the one thing to do next. */
export function RunPlate({ on }: Readonly<{ on: RunOnScreen }>) {
  const { planned, isOld, isRefused, facts, pieces, formatter, locale, id } = on;
  const line = planned === null ? null : runAnswerWords(planned.plan, pieces, formatter, locale);
  return (
    <section
      className={styles.plate}
      data-dashed={!facts.isBegun || isRefused || undefined}
      aria-label={runTable.plate}
      aria-busy={(isOld && !isRefused) || undefined}
    >
      <div className={styles.told}>
        <p className={styles.answer}>
          {line === null ? (
            isRefused ? (
              runTable.noClock
            ) : (
              runTable.waits
            )
          ) : (
            <>
              <strong>{line.key}</strong>
              {line.after}
            </>
          )}
        </p>
        <p className={styles.quiet} role="status">
          {planned !== null && isRefused ? runTable.old : ''}
        </p>
        <p className={styles.quiet}>{stateWords(on)}</p>
      </div>
      <div className={styles.ends}>
        {facts.isBegun && (
          <ButtonLink kind={facts.isClosed ? 'plain' : 'strong'} href={`/making/${id}/press`}>
            {runTable.press}
          </ButtonLink>
        )}
        {facts.isBegun && (
          <ButtonLink kind={facts.isClosed ? 'strong' : 'plain'} href={`/making/${id}/after`}>
            {runTable.after}
          </ButtonLink>
        )}
      </div>
      <LaterPart part={laterParts.begin} what="Beginning the run" props={{ on }} />
      {facts.isBegun && !facts.isClosed && (
        <LaterPart
          part={laterParts.clock}
          what="The clock of the run"
          props={{ workspace: on.workspace, runId: id, locale }}
        />
      )}
    </section>
  );
}
