import { CardSection } from '@/app/_controls/CardSection';
import { Answer } from '@/app/_docket/common/Answer';
import { otherCurrencyWords } from '@/app/_words/year/entryWords';
import {
  expenseLines,
  expensesAnswer,
  takingsAnswer,
  takingsLines,
  taxNotes,
} from '@/app/_words/year/moneyWords';
import { SumLines } from './SumLines';
import styles from './Year.module.css';
import type { YearSectionProps } from './yearSection';

/** Takings by way of selling with what is known of tax in them, and expenses by kind. */
export function MoneySections({ on }: YearSectionProps) {
  const { standing, workspace, locale } = on;
  const notes = [...taxNotes(standing, locale), ...otherCurrencyWords(standing, locale)];
  return (
    <>
      <CardSection
        numeral={3}
        heading="Takings"
        id="year-takings"
        answer={<Answer words={takingsAnswer(standing, locale)} />}
      >
        <SumLines lines={takingsLines(standing, workspace.workshop.channels, locale)} />
        {notes.map((words) => (
          <p className={styles.quiet} key={words}>
            {words}
          </p>
        ))}
      </CardSection>
      <CardSection
        numeral={4}
        heading="Expenses"
        id="year-expenses"
        answer={<Answer words={expensesAnswer(standing, locale)} />}
      >
        <SumLines lines={expenseLines(standing, locale)} />
      </CardSection>
    </>
  );
}
