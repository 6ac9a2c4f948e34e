import { findingWords } from '@/app/_words/findings/findingWords';
import type { TextContext } from '@/app/_words/formatter';
import { type Finding, isStanding } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import styles from './JobSheet.module.css';
import { SheetHead } from './SheetHead';

type StoppedPageProps = Readonly<{ input: JobInput; findings: readonly Finding[]; context: TextContext }>;

/** In the place of the sheet while a stop stands: nobody is to press by a plan that does not work. */
export function StoppedPage({ input, findings, context }: StoppedPageProps) {
  return (
    <>
      <SheetHead input={input} kind="Not to be made yet" />
      <p className={styles.stopped}>There is no job sheet while a stop stands:</p>
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
    </>
  );
}
