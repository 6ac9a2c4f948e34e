import { Button } from '@/app/_controls/Button';
import { ButtonLink } from '@/app/_controls/ButtonLink';
import type { RunOnScreen } from '@/app/_runBook/runOnScreen';
import { goToSection } from '@/app/_sections/goToSection';
import { findingWords } from '@/app/_words/findings/findingWords';
import { runTable } from '@/app/_words/making/runs/runTable';
import { heatingsWords, runTroubleWords } from '@/app/_words/making/runs/runTroubleWords';
import type { RunTrouble } from '@/lib/making/runPlan';
import styles from './Run.module.css';

/** What keeps the run from the clock, each with the way out. */
export function Troubles({ on }: Readonly<{ on: RunOnScreen }>) {
  const { troubles, formatter, locale, context } = on;
  return (
    <section className={styles.asks} aria-labelledby="run-troubles">
      <h2 id="run-troubles">Before there is a clock</h2>
      <ul className={styles.rows}>
        {troubles.map((trouble) => {
          const { sentence, mend } = runTroubleWords(trouble, formatter, locale, ({ why }) =>
            why === null ? 'Its sums give no number.' : findingWords(why, context).sentence,
          );
          return (
            <li key={JSON.stringify(trouble)} className={styles.row}>
              <div>
                <p>{sentence}</p>
                <p className={styles.quiet}>{mend}</p>
              </div>
              <WayOut {...{ trouble, on }} />
            </li>
          );
        })}
      </ul>
    </section>
  );
}

// Helpers

function WayOut({ trouble, on }: Readonly<{ trouble: RunTrouble; on: RunOnScreen }>) {
  switch (trouble.kind) {
    case 'moreHeatings':
      return (
        <Button onPress={() => on.set('Heatings-up of the run', ['heatings'], trouble.needed)}>
          {runTable.acceptHeatings(heatingsWords(trouble.needed))}
        </Button>
      );
    case 'jobStopped':
    case 'noPieces':
      return <ButtonLink href={`/jobs/${trouble.jobId}`}>To the job</ButtonLink>;
    case 'noBlocks':
      return on.run.ownBlocks === null ? (
        <ButtonLink href="/workshop#hours">To the workshop</ButtonLink>
      ) : (
        <Button onPress={() => goToSection('when')}>To its blocks</Button>
      );
    case 'noWorks':
    case 'jobTwice':
    case 'jobMissing':
      return <Button onPress={() => goToSection('made')}>To its jobs</Button>;
    case 'noBlock':
    case 'blockEmpty':
    case 'blocksOverlap':
    case 'blocksEnd':
      return <Button onPress={() => goToSection('when')}>To its blocks</Button>;
    default:
      return trouble satisfies never;
  }
}
