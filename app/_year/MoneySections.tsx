import { CardSection } from '@/app/_controls/CardSection';
import { Answer } from '@/app/_docket/common/Answer';
import { otherCurrencyWords } from '@/app/_words/year/entryWords';
import {
  expenseLines,
  expensesAnswer,
  overheadAnswer,
  overheadNote,
  takingsAnswer,
  takingsLines,
  taxCaution,
} from '@/app/_words/year/moneyWords';
import { SumLines } from './SumLines';
import styles from './Year.module.css';
import type { YearSectionProps } from './yearSection';

/** Takings by way of selling, expenses by kind, and whether work carried the overhead. */
export function MoneySections({ on }: YearSectionProps) {
  const { standing, workspace, formatter, locale } = on;
  const others = otherCurrencyWords(standing, locale);
  return (
    <>
      <CardSection
        numeral={null}
        heading="Takings"
        id="year-takings"
        answer={<Answer words={takingsAnswer(standing, locale)} />}
      >
        <SumLines lines={takingsLines(standing, workspace.workshop.channels, locale)} />
        {standing.tax.minor !== 0 && <p className={styles.quiet}>{taxCaution}</p>}
        {others.map((words) => (
          <p className={styles.quiet} key={words}>
            {words}
          </p>
        ))}
      </CardSection>
      <CardSection
        numeral={null}
        heading="Expenses"
        id="year-expenses"
        answer={<Answer words={expensesAnswer(standing, locale)} />}
      >
        <SumLines lines={expenseLines(standing, locale)} />
      </CardSection>
      <CardSection
        numeral={null}
        heading="Overhead"
        id="year-overhead"
        answer={<Answer words={overheadAnswer(standing, locale)} />}
      >
        <p className={styles.quiet}>
          {overheadNote(standing, workspace.workshop.policy.wearInOverhead, formatter)}
        </p>
      </CardSection>
    </>
  );
}
