import { fromMinor, type MinorUnits, shownParts } from '@/shared/money';
import { type Taxed, taxAdded, taxInside } from './taxOf';

export interface DocumentLine {
  /** Whole minor units, with or without tax as the mode says; negative where money is given back. */
  readonly amount: MinorUnits;
  /** Share of tax on it, 0.07 for 7 %. */
  readonly tax: number;
}

interface DocumentTax {
  /** One for each line; their parts add to the total exactly. */
  readonly lines: readonly Taxed[];
  readonly total: Taxed;
}

interface DocumentTaxTerms {
  readonly currency: string;
  /** Whether the amounts have tax inside or get it added. */
  readonly mode: 'added' | 'inside';
  /**
   * `line`: tax is rounded on each line and added up. `document`: once for all lines of one share, and handed to the
   * lines by largest remainder. Which one holds is a question for the local authority.
   */
  readonly rounding: 'line' | 'document';
}

/** The tax of a quote, an order or a ticket. */
export function documentTax(lines: readonly DocumentLine[], terms: DocumentTaxTerms): DocumentTax {
  const taxed =
    terms.rounding === 'line' ? lines.map((line) => ofLine(line, terms)) : byDocument(lines, terms);
  const sum = (of: keyof Taxed) => taxed.reduce((running, line) => running + line[of], 0) as MinorUnits;
  return { lines: taxed, total: { without: sum('without'), tax: sum('tax'), with: sum('with') } };
}

const ofLine = ({ amount, tax }: DocumentLine, { mode }: DocumentTaxTerms): Taxed =>
  mode === 'added' ? taxAdded(amount, tax) : taxInside(amount, tax);

function byDocument(lines: readonly DocumentLine[], { mode, currency }: DocumentTaxTerms): readonly Taxed[] {
  const taxes = new Map<DocumentLine, MinorUnits>();
  for (const share of new Set(lines.map(({ tax }) => tax))) {
    const alike = lines.filter(({ tax }) => tax === share);
    const part = mode === 'added' ? share : share / (1 + share);
    const exact = alike.map(({ amount }) => fromMinor(amount, currency) * part);
    const total = exact.reduce((sum, tax) => sum + tax, 0);
    const whole = shownParts(total, exact, currency);
    for (const [index, line] of alike.entries()) taxes.set(line, whole[index] ?? (0 as MinorUnits));
  }
  return lines.map((line): Taxed => {
    const tax = taxes.get(line) ?? (0 as MinorUnits);
    const { amount } = line;
    return mode === 'added'
      ? { without: amount, tax, with: (amount + tax) as MinorUnits }
      : { without: (amount - tax) as MinorUnits, tax, with: amount };
  });
}
