/** @returns “1st”, “6th”, “11th”, “22nd” */
export function ordinal(place: number): string {
  const [ten, hundred] = [place % 10, place % 100];
  if (hundred >= 11 && hundred <= 13) return `${place}th`;
  return `${place}${ten === 1 ? 'st' : ten === 2 ? 'nd' : ten === 3 ? 'rd' : 'th'}`;
}
