/** The signs one locale writes numbers with. */
export interface NumberMarks {
  readonly decimal: string;
  /** Every sign that may part groups here; empty where the locale has none. */
  readonly groups: readonly string[];
  /** Digits in the last group, then in the ones before it (3 and 2 in en-IN). */
  readonly groupSizes: Readonly<{ last: number; others: number }>;
  /** The locale's own ten digits, 0 to 9. */
  readonly digits: readonly string[];
}

/**
 * Reads a locale's number signs from Intl, so no table of ours can be out of date.
 *
 * @param locale - a BCP 47 tag
 * @returns the decimal mark, group marks, group sizes and digits
 * @example numberMarks('de').decimal // ','
 */
export function numberMarks(locale: string): NumberMarks {
  const known = read.get(locale);
  if (known) return known;
  const parts = new Intl.NumberFormat(locale, { useGrouping: 'always' }).formatToParts(1234567890123.5);
  const integers = parts.filter((part) => part.type === 'integer').map((part) => part.value.length);
  const group = parts.find((part) => part.type === 'group')?.value ?? '';
  const last = integers.at(-1) ?? 3;
  const plain = new Intl.NumberFormat(locale, { useGrouping: false });
  const marks: NumberMarks = {
    decimal: parts.find((part) => part.type === 'decimal')?.value ?? '.',
    groups: group === '' ? [] : kin(group),
    groupSizes: { last, others: integers.at(-2) ?? last },
    digits: Array.from({ length: 10 }, (_, digit) => plain.format(digit)),
  };
  read.set(locale, marks);
  return marks;
}

// Helpers

const read = new Map<string, NumberMarks>();

/** No keyboard has a narrow no-break space or the printer's apostrophe: what stands in for them counts too. */
const families: readonly (readonly string[])[] = [
  [' ', '\u00A0', '\u202F', '\u2009'],
  ["'", '\u2019'],
];

function kin(group: string): readonly string[] {
  return families.find((family) => family.includes(group)) ?? [group];
}
