/** The way from what is sold to the run that makes it. */
export const makeItWords = {
  plan: 'Make it: plan the run',
  to: (name: string) => `To the run ${name}`,
} as const;
