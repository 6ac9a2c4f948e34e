import type { StockNeed } from '@/lib/stock/reserved';
import type { Run, RunWork } from '@/shared/schemas/making/run';
import type { JobInput } from '@/shared/schemas/request';
import type { Workshop } from '@/shared/schemas/workshop';

/** A run and everything it is planned from; plain data. */
export interface RunQuestion {
  readonly runId: string;
  readonly isBegun: boolean;
  readonly run: Run;
  readonly works: readonly {
    readonly work: RunWork;
    /** Wanted when this work is to be there; null where the job is not on this device. */
    readonly input: JobInput | null;
  }[];
  readonly bench: Pick<Workshop, 'blocks' | 'daysOff'>;
  /** What of the stock is kept for other work. */
  readonly kept: readonly Pick<StockNeed, 'item' | 'quantity'>[];
  /** YYYY-MM-DD. */
  readonly today: string;
  /** Minutes after its midnight before which nothing is planned. */
  readonly nowMinute: number;
}
