import { grouped } from '@/shared/grouped';

/** Blanks that are laid out for a size of a line. Pieces, whole. */
export interface LaidOut {
  readonly jobId: string;
  readonly lineId: string;
  readonly blankId: string;
  /** The customer brings them. */
  readonly isBrought: boolean;
  readonly size: string;
  readonly wanted: number;
  /** Spares among them. */
  readonly take: number;
}

/** Blanks of one kind and size, whoever they are for. */
export interface SpareStack<Of extends LaidOut = LaidOut> {
  readonly size: string;
  readonly wanted: number;
  readonly take: number;
  /** Beyond what is wanted: of whoever spoils one. */
  readonly spares: number;
  /** In the order given. */
  readonly of: readonly Of[];
  /** Several lines are made of the blank: its spares are told once, not by line. */
  readonly isShared: boolean;
}

/**
 * Stacks as they stand at the bench. A spare is of the blank and its size, whichever design is pressed on it; what a
 * customer brought is for the lines of their own job.
 *
 * @returns in the order in which each is met first
 */
export function spareStacks<Of extends LaidOut>(laid: readonly Of[]): readonly SpareStack<Of>[] {
  const blankOf = ({ jobId, blankId, isBrought }: Of) => JSON.stringify([blankId, isBrought ? jobId : null]);
  const linesOf = grouped(laid, blankOf);
  return [...grouped(laid, (one) => `${blankOf(one)} ${one.size}`).values()].map((of) => {
    const lines = of[0] === undefined ? [] : (linesOf.get(blankOf(of[0])) ?? []);
    const all = (what: 'wanted' | 'take') => of.reduce((sum, one) => sum + one[what], 0);
    const [wanted, take] = [all('wanted'), all('take')];
    return {
      ...{ size: of[0]?.size ?? '', wanted, take, spares: take - wanted, of },
      isShared: new Set(lines.map(({ jobId, lineId }) => `${jobId} ${lineId}`)).size > 1,
    };
  });
}

/** @returns the stack that a size of a line takes from */
export function stackFinder<Of extends LaidOut>(laid: readonly Of[]) {
  const found = new Map(spareStacks(laid).flatMap((stack) => stack.of.map((one) => [keyOf(one), stack])));
  return (of: Pick<LaidOut, 'jobId' | 'lineId' | 'size'>): SpareStack<Of> | undefined => found.get(keyOf(of));
}

// Helpers

const keyOf = ({ jobId, lineId, size }: Pick<LaidOut, 'jobId' | 'lineId' | 'size'>): string =>
  JSON.stringify([jobId, lineId, size]);
