import { CardSection } from '@/app/_controls/CardSection';
import { CheckField } from '@/app/_fields/CheckField';
import type { RunOnScreen } from '@/app/_runBook/runOnScreen';
import styles from '@/app/_runs/run/Run.module.css';
import { gainWords, paceWords, stageNames } from '@/app/_words/making/runs/paceWords';
import { runTable } from '@/app/_words/making/runs/runTable';
import { minutesWords } from '@/app/_words/minutesWords';

/** How fast it goes, who sets the pace, and what would widen it. */
export function PaceSection({ on, numeral }: Readonly<{ on: RunOnScreen; numeral: number }>) {
  const { answer, run, formatter, locale, set } = on;
  const pace = answer?.pace ?? null;
  const line = pace === null ? null : paceWords(pace, formatter);
  return (
    <CardSection
      {...{ numeral }}
      id="pace"
      heading={runTable.pace}
      answer={
        line === null ? (
          runTable.noClock
        ) : (
          <>
            <strong>{line.key}</strong>
            {line.after}
          </>
        )
      }
    >
      {pace !== null && (
        <ul className={styles.rows}>
          {(['printer', 'press', 'hands'] as const).map((stage) => (
            <li key={stage} className={styles.row}>
              <span>{stageNames[stage]}</span>
              <span className={styles.figure}>{minutesWords(pace.each[stage], locale)} a piece</span>
            </li>
          ))}
          {pace.gains.map((gain) => {
            const words = gainWords(gain, formatter);
            return (
              <li key={gain.what} className={styles.row}>
                <span>{words.key}</span>
                <span className={styles.figure}>{words.after}</span>
              </li>
            );
          })}
        </ul>
      )}
      <CheckField
        label={runTable.preTaped}
        hint={runTable.preTapedHint}
        checked={run.isPreTaped}
        onCommit={(isPreTaped) => set(runTable.preTaped, ['isPreTaped'], isPreTaped)}
      />
    </CardSection>
  );
}
