import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { Answer } from '@/app/_docket/common/Answer';
import { hourSources } from '@/app/_words/year/entryWords';
import { hourLines, hoursAnswer } from '@/app/_words/year/moneyWords';
import { SumLines } from './SumLines';
import styles from './Year.module.css';
import type { YearSectionProps } from './yearSection';

/** All hours of the year, and how they are known. */
export function HoursSection({ on: { standing, locale } }: YearSectionProps) {
  const sources = hourSources(standing, locale);
  const lines = hourLines(standing, locale);
  return (
    <CardSection
      numeral={7}
      heading="Hours"
      id="year-hours"
      answer={<Answer words={hoursAnswer(standing, locale)} />}
    >
      {sources.length > 0 && <p className={styles.quiet}>{`${sources.join('; ')}.`}</p>}
      {lines.length > 0 && (
        <FoldRow
          place="year"
          folds={[{ id: 'hours-by-work', name: 'By work', body: () => <SumLines lines={lines} /> }]}
        />
      )}
    </CardSection>
  );
}
