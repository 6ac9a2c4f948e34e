import type { JobInput } from '@/shared/schemas/request';
import type { StudyName } from './studies';

/** What the page asks of the study worker. */
export interface StudyRequest {
  readonly number: number;
  readonly name: StudyName;
  readonly input: JobInput;
  readonly question: unknown;
}

/** What it gives back; the answer is null where the job cannot be costed. A fault of ours is told. */
export type StudyReply =
  | { readonly kind: 'answered'; readonly number: number; readonly answer: unknown }
  | { readonly kind: 'failed'; readonly number: number; readonly why: string };
