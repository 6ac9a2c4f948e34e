import type { Plain, Variant } from './findingCase';

/** A row, and the character of its formula, counted from 1. */
interface InFormula {
  readonly label: string;
  readonly at: number;
}

/** Facts of the findings about the maker's own cost rows. */
export interface RowFacts {
  'ROW-01':
    | Variant<'unreadable' | 'comma', InFormula>
    /** A number with a comma, and how it is written in a formula. */
    | Variant<'decimalComma', InFormula & { readonly text: string; readonly instead: string }>
    | Variant<
        'unclearComma',
        InFormula & { readonly text: string; readonly instead: string; readonly other: string }
      >
    | Variant<'tooDeep', InFormula & { readonly most: number }>
    | Variant<'badSign' | 'unknownName' | 'unknownFunction', InFormula & { readonly text: string }>;
  /** Labels of the rows that wait for each other. */
  'ROW-02': Plain<{ readonly label: string; readonly chain: string }>;
  'ROW-03': /** OpenFormula's name of the error. */
    | Plain<{ readonly label: string; readonly error: string }>
    /** Money the row takes off, in currency units, above 0. */
    | Variant<'negative' | 'nothingLeft', { readonly label: string; readonly amount: number }>;
}
