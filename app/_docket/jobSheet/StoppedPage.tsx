import { jobSheetTable } from '@/app/_words/docket/jobSheetTable';
import { findingWords } from '@/app/_words/findings/findingWords';
import type { TextContext } from '@/app/_words/formatter';
import { type Finding, isStanding } from '@/shared/finding';
import styles from './JobSheet.module.css';

type StoppedPageProps = Readonly<{ findings: readonly Finding[]; context: TextContext }>;

/** In the place of the sheet while a stop stands: nobody is to press by a plan that does not work. */
export const StoppedPage = ({ findings, context }: StoppedPageProps) => (
  <section className={styles.paper} aria-labelledby="not-yet">
    <h2 id="not-yet">{jobSheetTable.notYet}</h2>
    <p>{jobSheetTable.stopped}</p>
    <ul className={styles.stops}>
      {findings.filter(isStanding).map((finding) => {
        const { sentence, detail } = findingWords(finding, context);
        return (
          <li key={`${finding.id} ${finding.where.document} ${finding.where.path.join(' ')}`}>
            <strong>{sentence}</strong> {detail}
          </li>
        );
      })}
    </ul>
  </section>
);
