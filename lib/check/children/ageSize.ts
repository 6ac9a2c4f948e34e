/** How small a child is that wears a size: under three, up to about five, or older. */
export type ChildSize = 'baby' | 'toddler' | 'youth';

/** Goods for these ages and younger are children's where the rules reach furthest: toys under 14, from memory. */
const OLDEST = 13;
const UNDER_THREE = 3;
/** Toddler sizes end at 5T, common practice. */
const TODDLER_END = 5;

/** @returns what an age in a name says: "5-6 years", "7 yrs", "12–18 M", "3T"; null where it names none. */
export function ageSize(name: string): ChildSize | null {
  const text = name.trim().toLowerCase();
  const toddler = /^(\d)\s*t$/.exec(text);
  if (toddler !== null) return ofAge(Number(toddler[1]), 'toddler');
  const months = /^(\d{1,2})(?:\s*[-–/]\s*(\d{1,2}))?\s*(?:m|mo|mos|mths?|months?)\.?$/.exec(text);
  if (months !== null) return ofAge(Number(months[1]) / 12, 'toddler');
  const years = /^(?:age\s*)?(\d{1,2})(?:\s*[-–/]\s*(\d{1,2}))?\s*(?:y|yr|yrs|years?)\.?$/.exec(text);
  const ages = years ?? /^age\s*(\d{1,2})(?:\s*[-–/]\s*(\d{1,2}))?$/.exec(text);
  if (ages === null) return null;
  const from = Number(ages[1]);
  return from > OLDEST ? null : ofAge(from, from < TODDLER_END ? 'toddler' : 'youth');
}

const ofAge = (years: number, older: ChildSize): ChildSize => (years < UNDER_THREE ? 'baby' : older);
