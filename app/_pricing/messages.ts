import type { JobAnswer } from '@/lib/costing/priceJob';
import type { JobInput } from '@/shared/schemas/request';

/** What the page asks of the pricing worker. */
export interface PriceQuestion {
  readonly number: number;
  readonly input: JobInput;
}

/** What the worker gives back; a fault of ours is told, never swallowed. */
export type PriceReply =
  | { readonly kind: 'priced'; readonly number: number; readonly answer: JobAnswer; readonly tookMs: number }
  | { readonly kind: 'failed'; readonly number: number; readonly why: string };
