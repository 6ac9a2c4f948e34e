import type { NotedStep } from './stepNote';

export type PlainStep = Exclude<
  NotedStep,
  'accepted' | 'approved' | 'revised' | 'lost' | 'change' | 'reprint' | 'reminded'
>;

/** @returns whether a step makes something of pictures, and so says which version of each. */
export const isOfVersions = (what: PlainStep): what is 'blanksOrdered' | 'printed' | 'pressed' =>
  what === 'blanksOrdered' || what === 'printed' || what === 'pressed';
