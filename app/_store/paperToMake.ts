import type { PaperFile } from '@/app/_transactions/issuePaper';
import type { NewEntry } from '@/lib/stored/newEntries';
import type { Bodies } from '@/lib/stored/registry';
import type { Paper, PaperNumber } from '@/shared/schemas/happened';

/** A paper whose file takes time to make. It is made for the number it will likely get. */
export type PaperToMake<Papers extends Bodies = Bodies> = {
  readonly [Kind in keyof Papers & string]: {
    readonly kind: Kind;
    readonly about: Paper['about'];
    readonly series: string;
    /** Asked more than once: by what it says the paper is told from others. */
    body(number: PaperNumber): Papers[Kind];
    file(number: PaperNumber): Promise<PaperFile>;
    /** What happens with it and is noted in the same step. */
    notes?(paperId: string): readonly NewEntry[];
  };
}[keyof Papers & string];
