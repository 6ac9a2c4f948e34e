import { ChoiceField } from '@/app/_fields/ChoiceField';
import { monthName, yearName } from '@/app/_words/year/yearNames';
import styles from './Year.module.css';

type YearFieldsProps = Readonly<{
  year: number;
  years: readonly number[];
  /** 1 for January to 12 for December. */
  firstMonth: number;
  locale: string;
  onYear: (year: number) => void;
  onFirstMonth: (month: number) => void;
}>;

/** Which year is looked at, and the month in which years begin. */
export function YearFields({ year, years, firstMonth, locale, onYear, onFirstMonth }: YearFieldsProps) {
  return (
    <div className={styles.fields}>
      <ChoiceField
        label="Year"
        value={String(year)}
        choices={years.map((one) => ({ value: String(one), label: yearName(one, firstMonth, locale) }))}
        onCommit={(one) => onYear(Number(one))}
      />
      <ChoiceField
        label="Begins in"
        value={String(firstMonth)}
        choices={months.map((month) => ({
          value: String(month),
          label: monthName(`2026-${String(month).padStart(2, '0')}-01`, locale, 'long'),
        }))}
        hint="Kept on this device."
        onCommit={(month) => onFirstMonth(Number(month))}
      />
    </div>
  );
}

// Helpers

const months = Array.from({ length: 12 }, (_, at) => at + 1);
