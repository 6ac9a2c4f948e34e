import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { Answer } from '@/app/_docket/common/Answer';
import { stockUntoldWords, wearLines, worthAnswer, worthNotes } from '@/app/_words/year/worthWords';
import { SumLines } from './SumLines';
import styles from './Year.module.css';
import type { YearSectionProps } from './yearSection';

/** What lies in stock at what was paid, what machines lost, and what of both nobody knows. */
export function WorthSection({ on: { standing, formatter, locale } }: YearSectionProps) {
  const lines = wearLines(standing, formatter, locale);
  const untold = stockUntoldWords(standing, locale);
  return (
    <CardSection
      numeral={5}
      heading="Stock and machines"
      id="year-worth"
      answer={<Answer words={worthAnswer(standing, locale)} />}
    >
      {worthNotes(standing, formatter).map((words) => (
        <p className={styles.quiet} key={words}>
          {words}
        </p>
      ))}
      {(lines.length > 0 || untold !== null) && (
        <FoldRow
          place="year"
          folds={[
            ...(untold === null
              ? []
              : [
                  {
                    id: 'unpaid',
                    name: untold.name,
                    body: () => <p className={styles.quiet}>{untold.says}</p>,
                  },
                ]),
            ...(lines.length === 0
              ? []
              : [{ id: 'wear', name: 'Wear by machine', body: () => <SumLines lines={lines} /> }]),
          ]}
        />
      )}
    </CardSection>
  );
}
