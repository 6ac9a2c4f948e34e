import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { Answer } from '@/app/_docket/common/Answer';
import { doubtWords } from '@/app/_words/year/entryWords';
import { payAnswer, payLines, payNotes } from '@/app/_words/year/payWords';
import { MonthDrawing } from './MonthDrawing';
import { SumLines } from './SumLines';
import styles from './Year.module.css';
import type { YearSectionProps } from './yearSection';

/** The pay of the year's hour first, the months drawn, then how it is reckoned. */
export function PaySection({ on }: YearSectionProps) {
  const { standing, today, formatter, locale } = on;
  const doubts = doubtWords(standing, today, locale);
  return (
    <CardSection
      numeral={null}
      isFirst
      heading="Pay of the year’s hour"
      id="year-pay"
      answer={<Answer words={payAnswer(standing, locale)} />}
    >
      <MonthDrawing {...{ standing, locale }} />
      {doubts.length > 0 && (
        <ul className={styles.cautions} aria-label="To be looked at">
          {doubts.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      )}
      <FoldRow
        place="year"
        folds={[
          {
            id: 'pay-sum',
            name: 'How it is reckoned',
            body: () => (
              <>
                <SumLines lines={payLines(standing, locale)} />
                {payNotes(standing, formatter, locale).map((words) => (
                  <p className={styles.quiet} key={words}>
                    {words}
                  </p>
                ))}
              </>
            ),
          },
        ]}
      />
    </CardSection>
  );
}
