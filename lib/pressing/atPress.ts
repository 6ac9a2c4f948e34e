import { z } from '@/shared/schemas/z';
import type { PressedTurn } from './foldPressings';
import type { PressBegun } from './pressPhase';

/** What lies in and before the press just now, in the hand of one screen: nothing of it is a count. */
export const atPressSchema = z.strictObject({
  /** The print that was chosen; null follows the order of pressing. */
  turn: z.string().max(500).nullable(),
  /** The size that was chosen; null follows the order of pressing. */
  size: z.string().max(100).nullable(),
  inPress: z
    .strictObject({
      size: z.string().max(100),
      phase: z.enum(['heat', 'press']),
      at: z.number().min(0),
    })
    .nullable(),
  /** Sizes of pieces lifted and not judged yet, the first lifted first. */
  lifted: z.array(z.string().max(100)).max(50),
  /** Somebody is being asked what was wrong with the last piece. */
  isAsking: z.boolean(),
  /** One more is pressed of a print that has all it needs. */
  isFurther: z.boolean().default(false),
});
export type AtPress = z.infer<typeof atPressSchema>;

export const NOTHING_AT_PRESS: AtPress = {
  ...{ turn: null, size: null, inPress: null, lifted: [], isAsking: false, isFurther: false },
};

/** @returns sizes that are to be pressed after what is in and before the press, the next first, each once */
export function sizesAhead({ counts }: Pick<PressedTurn, 'counts'>, at: AtPress): readonly string[] {
  const waiting = [...at.lifted, ...(at.inPress === null ? [] : [at.inPress.size])];
  const isAnyReady = counts.some(({ ready }) => ready > 0);
  const open = counts
    .filter(
      ({ size, toGo, ready }) => (isAnyReady ? ready : toGo) > waiting.filter((one) => one === size).length,
    )
    .map(({ size }) => size);
  return at.size !== null && open.includes(at.size)
    ? [at.size, ...open.filter((size) => size !== at.size)]
    : open;
}

/** @returns the size of the piece that is judged next; null where nothing is left to press */
export const sizeToJudge = (turn: Pick<PressedTurn, 'counts'>, at: AtPress): string | null =>
  at.lifted[0] ?? at.inPress?.size ?? sizesAhead(turn, at)[0] ?? at.size ?? turn.counts.at(-1)?.size ?? null;

/**
 * One goes into the press. What was pressed there was lifted; what was heated there is what is pressed now.
 *
 * @param now ms since 1970
 */
export function putIn(
  at: AtPress,
  turn: Pick<PressedTurn, 'counts'>,
  phase: PressBegun['phase'],
  now: number,
): AtPress {
  const { inPress } = at;
  if (inPress !== null && inPress.phase === 'heat') return { ...at, inPress: { ...inPress, phase, at: now } };
  const lifted = inPress === null ? at.lifted : [...at.lifted, inPress.size].slice(-50);
  const size = sizesAhead(turn, at)[0] ?? at.size ?? turn.counts.at(-1)?.size;
  return size === undefined ? at : { ...at, lifted, inPress: { size, phase, at: now } };
}

/** The piece that was judged lies before the press no more; a further one is one alone. */
export function afterVerdict(before: AtPress, isAsking: boolean): AtPress {
  const at = before.isFurther ? { ...before, isFurther: false, size: null } : before;
  if (at.lifted.length > 0) return { ...at, isAsking, lifted: at.lifted.slice(1) };
  return { ...at, isAsking, inPress: at.inPress?.phase === 'press' ? null : at.inPress };
}

/** @returns whether the hands are done with the print: nothing of it is left to press, in the press or before it */
export const isLeft = ({ isThrough }: Pick<PressedTurn, 'isThrough'>, at: AtPress): boolean =>
  isThrough && !at.isFurther && at.inPress === null && at.lifted.length === 0;

/**
 * The print that is up: the one chosen, else that of the piece this device noted last, so that nobody presses the next
 * print unaware, else the first with something to press.
 *
 * @param lastKey of the piece noted last; null where there is none
 */
export const turnUp = <Of extends PressedTurn>(
  { turns, current }: { readonly turns: readonly Of[]; readonly current: Of | null },
  at: Pick<AtPress, 'turn'>,
  lastKey: string | null,
): Of | undefined =>
  turns.find(({ key }) => key === at.turn) ??
  turns.find(({ key }) => key === lastKey) ??
  current ??
  turns.at(-1);

/** A verdict was taken back: its piece is to be judged again. */
export const afterUndo = (at: AtPress, size: string | null): AtPress => ({
  ...at,
  isAsking: false,
  lifted: size === null ? at.lifted : [size, ...at.lifted].slice(0, 50),
});
