import type { WorkerFailure } from '@/app/_network/workerFailure';

/** Why an answer is missing for good on this page, to follow a colon. */
export const PART_GONE = 'the server has a newer version, and no longer the part of this one that does it';

/** @returns why an answer is missing and what becomes of it, to follow a colon. */
export function whyMissing({ kind, why }: Pick<WorkerFailure, 'kind' | 'why'>): string {
  switch (kind) {
    case 'notStarted':
      return 'the part of the app that does it could not be fetched. It comes by itself once there is a network, and nothing you typed is touched.';
    case 'gone':
      return `${PART_GONE}. Open the page anew to get it; what you typed is kept.`;
    case 'broke':
      return `the part of the app that does it broke down (${why}). Nothing you typed is touched.`;
    case 'failed':
      return `${why}. Nothing you typed is touched.`;
    default:
      return kind satisfies never;
  }
}

/** The same as a sentence of its own. */
export const sentenceOf = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
