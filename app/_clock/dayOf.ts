/** @returns the day a moment falls on by the maker's own calendar, not the one in Greenwich: YYYY-MM-DD. */
export function dayOf(moment: Date): string {
  const digits = (value: number, length: number) => String(value).padStart(length, '0');
  return `${digits(moment.getFullYear(), 4)}-${digits(moment.getMonth() + 1, 2)}-${digits(moment.getDate(), 2)}`;
}
