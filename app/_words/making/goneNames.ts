/** What something of a run is called once it is removed, or stands on another device alone, and nothing kept its name. */
export const goneNames = {
  job: 'a job no longer here',
  blank: 'a blank no longer here',
  press: 'a press no longer here',
  sheet: 'a paper no longer here',
} as const;

/** @returns the name that was kept of something removed, marked as such: “White shirt (no longer here)” */
export const goneName = (kept: string): string => `${kept} (no longer here)`;
