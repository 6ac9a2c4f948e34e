import type { SheetsAnswer } from '@/lib/sheets/sheetsAnswer';
import type { JobInput } from '@/shared/schemas/request';

/** What the page asks of the worker that lays sheets out. */
export interface SheetsQuestion {
  readonly number: number;
  readonly input: JobInput;
}

/** What the worker gives back; a fault of ours is told, never swallowed. */
export type SheetsReply =
  | { readonly kind: 'answered'; readonly number: number; readonly answer: SheetsAnswer | null }
  | { readonly kind: 'failed'; readonly number: number; readonly why: string };
