import type { PaperFile } from '@/app/_transactions/issuePaper';
import type { Bodies } from '@/lib/stored/registry';
import type { Paper, PaperNumber } from '@/shared/schemas/happened';

/** A paper whose file takes time to make. It is made for the number it will likely get. */
export type PaperToMake<Papers extends Bodies = Bodies> = {
  readonly [Kind in keyof Papers & string]: {
    readonly kind: Kind;
    readonly about: Paper['about'];
    readonly series: string;
    make(number: PaperNumber): Promise<{ readonly body: Papers[Kind]; readonly file: PaperFile }>;
  };
}[keyof Papers & string];
