import { sameValue } from '@/lib/merging/sameValue';
import { wantedSizes } from '@/lib/stall/plan/demand/pastWanted';
import { PRIOR_PIECES, sizeShares } from '@/lib/stall/plan/demand/sizeShares';
import { compareText } from '@/shared/compareText';
import type { SizeMix } from '@/shared/schemas/sizeMix';
import type { StallDay, StallRange } from '@/shared/schemas/stallDay';
import type { LearnedFrom } from './learnedFrom';
import type { LearnedPlace, Lesson } from './lesson';

/**
 * Which sizes of a blank are asked for: by orders that runs were begun for, and at stalls, where what was missed after
 * a sell-out counts; the mix held at a stall counts like 50 pieces (common practice). Stalls blend in their own sales by
 * themselves, so that what is taken over are the pieces ordered, and nothing is counted twice.
 */
export function learnedSizes(from: LearnedFrom): readonly Lesson[] {
  return from.documents.blanks.flatMap(({ id, body }): readonly Lesson[] => {
    const names = [...new Set(body.sizes.map(({ name }) => name))];
    const { ordered, runIds } = orderedOf(from, id, names);
    const ranges = rangesOf(from, id);
    const [first] = ranges;
    const usual = usualOf(first?.range.sizes ?? ADULTS);
    const wanted = first === undefined ? wantedOfBlank(from, id) : wantedAt(from, first);
    const asked = total(ordered) + names.reduce((sum, name) => sum + (wanted.get(name) ?? 0), 0);
    if (names.length < 2 || Math.round(asked) < 1) return [];
    const before = sizeShares(usual, new Map(), names);
    const after = sizeShares(withOrdered(usual, ordered), wanted, names);
    const sizes = names.map((size) => {
      const measured = after.get(size) ?? 0;
      // The spread of one share of a Dirichlet distribution.
      const spread = Math.sqrt((measured * (1 - measured)) / (PRIOR_PIECES + asked + 1));
      return { size, standard: before.get(size) ?? 0, measured, spread };
    });
    const [most] = sizes.toSorted((one, other) => moved(other) - moved(one));
    if (most === undefined) return [];
    const { standard, measured, spread } = most;
    return [
      {
        subject: { of: 'sizeMix', blankId: id },
        ...{ standard, measured, spread, unit: 'share', sizes, observations: Math.round(asked) },
        ...{ upper: null, seen: null, runIds },
        places: ranges.flatMap((one) => placeOf(one, ordered)),
      },
    ];
  });
}

// Helpers

type Ordered = NonNullable<SizeMix['ordered']>;

interface RangeOfBlank {
  readonly stallDayId: string;
  readonly stallDay: StallDay;
  readonly range: StallRange & { readonly sizes: SizeMix };
}

const ADULTS: SizeMix = { from: 'audience', audience: 'adults' };

/** What orders asked for; of a job in several runs the last of them counts. */
function orderedOf({ runs }: LearnedFrom, blankId: string, names: readonly string[]) {
  const works = new Map(
    runs.flatMap(({ runId, standard }) =>
      standard.works
        .filter(({ orderId }) => orderId !== null)
        .map((work) => [work.jobId, { runId, work }] as const),
    ),
  );
  const own = [...works.values()].flatMap(({ runId, work }) =>
    work.lines
      .filter((line) => line.blankId === blankId)
      .flatMap(({ sizes }) => sizes.map(({ size, wanted }) => ({ runId, size, wanted }))),
  );
  const ordered = names.flatMap((size) => {
    const pieces = own.reduce((sum, one) => sum + (one.size === size ? one.wanted : 0), 0);
    return pieces > 0 ? [{ size, pieces }] : [];
  });
  return { ordered, runIds: [...new Set(own.map(({ runId }) => runId))] };
}

/**
 * Ranges of stall days to come that bring nothing but the blank: a mix over several tells nothing of any of them. The
 * soonest is first, whose mix is told.
 */
function rangesOf({ documents, day }: LearnedFrom, blankId: string): readonly RangeOfBlank[] {
  return documents.stallDays
    .filter(({ body }) => body.archivedOn === null && body.areOwnSizesLeftOut !== true && isToCome(body, day))
    .toSorted(
      (one, other) => compareText(firstDay(one.body), firstDay(other.body)) || compareText(one.id, other.id),
    )
    .flatMap(({ id, body }) =>
      body.ranges.flatMap((range): readonly RangeOfBlank[] => {
        const { sizes, designs } = range;
        const isOfBlank = designs.every((one) => blankOf(documents, one) === blankId);
        return sizes === null || designs.length === 0 || !isOfBlank
          ? []
          : [{ stallDayId: id, stallDay: body, range: { ...range, sizes } }];
      }),
    );
}

/** After all that are known where nobody knows it yet. */
const firstDay = ({ days }: StallDay): string => days[0]?.day ?? '9999-12-31';

/** One whose day nobody knows yet is. */
const isToCome = ({ days }: StallDay, day: string): boolean =>
  days.length === 0 || days.some((one) => one.day >= day);

const blankOf = (
  { jobs }: LearnedFrom['documents'],
  { jobId, lineId }: { readonly jobId: string; readonly lineId: string },
): string | null =>
  jobs.find(({ id }) => id === jobId)?.body.lines.find(({ id }) => id === lineId)?.blankId ?? null;

/** A day that is closed early teaches itself nothing. */
const wantedAt = ({ past }: LearnedFrom, { stallDayId, stallDay, range }: RangeOfBlank) =>
  wantedSizes(
    stallDay.ranges,
    range,
    past.filter((one) => one.stallDayId !== stallDayId),
  );

function wantedOfBlank({ past, documents }: LearnedFrom, blankId: string): ReadonlyMap<string, number> {
  const pieces = new Map<string, number>();
  for (const one of past.flatMap(({ wanted }) => wanted))
    if (blankOf(documents, one) === blankId) pieces.set(one.size, (pieces.get(one.size) ?? 0) + one.pieces);
  return pieces;
}

function placeOf({ stallDayId, range }: RangeOfBlank, ordered: Ordered): readonly LearnedPlace[] {
  const after = withOrdered(usualOf(range.sizes), ordered);
  if (sameValue(range.sizes, after)) return [];
  const path = ['ranges', range.id, 'sizes'];
  return [{ kind: 'stallDay', id: stallDayId, path, before: range.sizes, after }];
}

function usualOf(mix: SizeMix): SizeMix {
  const { ordered, ...usual } = mix;
  return usual;
}

const withOrdered = (mix: SizeMix, ordered: Ordered): SizeMix =>
  ordered.length === 0 ? mix : { ...mix, ordered };

const total = (ordered: Ordered): number => ordered.reduce((sum, { pieces }) => sum + pieces, 0);

const moved = ({ standard, measured }: { readonly standard: number; readonly measured: number }): number =>
  Math.abs(measured - standard);
