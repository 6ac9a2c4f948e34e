const pressures: Readonly<Record<string, string>> = {
  light: 'light',
  lightMedium: 'light to medium',
  medium: 'medium',
  mediumFirm: 'medium to firm',
  firm: 'firm',
};

const papers: Readonly<Record<string, string>> = {
  freshPlain: 'fresh plain paper',
  reused: 'paper used before',
  parchment: 'parchment',
  wax: 'waxed paper',
  ptfe: 'a PTFE sheet',
  none: 'no paper',
};

/** @returns a pressure level in words. */
export const pressureWords = (level: string): string => pressures[level] ?? level;

/** @returns a protective paper in words. */
export const paperWords = (paper: string): string => papers[paper] ?? paper;
