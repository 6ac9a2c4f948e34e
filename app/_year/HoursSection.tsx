import { CardSection } from '@/app/_controls/CardSection';
import { Answer } from '@/app/_docket/common/Answer';
import { hourSources } from '@/app/_words/year/entryWords';
import { hoursAnswer } from '@/app/_words/year/moneyWords';
import styles from './Year.module.css';
import type { YearSectionProps } from './yearSection';

/** All hours of the year, and how they are known. */
export function HoursSection({ on: { standing, locale } }: YearSectionProps) {
  const sources = hourSources(standing, locale);
  return (
    <CardSection
      numeral={null}
      heading="Hours"
      id="year-hours"
      answer={<Answer words={hoursAnswer(standing, locale)} />}
    >
      {sources.length > 0 && <p className={styles.quiet}>{`${sources.join('; ')}.`}</p>}
    </CardSection>
  );
}
