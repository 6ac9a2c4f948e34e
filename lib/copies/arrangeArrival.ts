import { sameValue } from '@/lib/merging/sameValue';
import { asKept } from '@/lib/stored/asKept';
import { snapshotOf } from '@/lib/stored/documentChange';
import { neededDocuments, type Registry } from '@/lib/stored/registry';
import type { Arrival, ArrivalChoice, ArrivalPlan, Choice, DraftMeeting } from './arrival';
import { comingEntries } from './comingEntries';
import type { CopyScope } from './copy';
import { idOfDouble, keyOfDouble, linkedToDoubles, namedAsDouble } from './doubles';
import { heldIn } from './heldIn';
import { withExchange, withWeighed } from './lineage';
import { namedFiles } from './namedFiles';
import { withNamedParts } from './namedParts';

type ArrivingDraft = Arrival['drafts'][number];
interface Chosen {
  readonly meeting: DraftMeeting;
  readonly choice: Choice;
}

/** What the store writes by the maker's choices; the sums of the preview and what is written are one. */
export function arrangeArrival(plan: ArrivalPlan, how: ArrivalChoice, registry: Registry): Arrival {
  const { copy, here } = plan;
  const chosen = plan.meetings.map((meeting) => ({ meeting, choice: choiceOf(meeting, how) }));
  const doubles = new Map(
    chosen.flatMap(({ meeting: { kind, theirs }, choice }) =>
      choice === 'both' ? [[keyOfDouble(kind, theirs.id), idOfDouble(theirs)] as const] : [],
    ),
  );
  const coming = chosen.flatMap((one) => draftOf(one, { mode: how.mode, of: copy.of, doubles, registry }));
  const drafts = withNamedParts(coming, plan, registry);
  const entries = comingEntries(copy, chosen, how.mode);
  const unreadable = copy.unreadable.map(({ raw }) => raw);
  const named = namedFiles([
    ...drafts.map(({ snapshot }) => snapshot.body),
    ...copy.papers,
    ...entries,
    ...unreadable,
  ]);
  const wanted = new Set([...named.map(({ sha256 }) => sha256), ...plan.filesBack]);
  return {
    drafts,
    papers: copy.papers.map((paper) => asKept(paper)),
    entries: entries.map((entry) => asKept(entry)),
    unreadable,
    files: copy.files.filter(({ sha256 }) => wanted.has(sha256) && !here.files.has(sha256)),
    exchanged: chosen.flatMap((one) => exchangedOf(one, plan)),
    lettersTaken: plan.lettersTaken,
    heldIn: heldIn(plan, chosen, { mode: how.mode, registry }),
    staying: how.mode === 'beside' ? 'all' : stayingOf(plan, drafts, registry),
    goes: how.mode === 'beside' ? [] : goesOf(plan, drafts, registry),
    goesBack: chosen.flatMap(({ meeting, choice }) =>
      choice === 'theirs' && (how.mode === 'replace' ? changedHere : weighed).has(meeting.state)
        ? [meeting]
        : [],
    ),
  };
}

// Helpers

const weighed: ReadonlySet<string> = new Set(['newerHere', 'clash', 'doubled']);
const changedHere: ReadonlySet<string> = new Set([...weighed, 'merged']);

function choiceOf({ id, choices }: DraftMeeting, { mode, choices: made }: ArrivalChoice): Choice {
  const asked = made !== undefined && Object.hasOwn(made, id) ? made[id] : undefined;
  if (asked !== undefined && choices.includes(asked)) return asked;
  // A copy that takes the place of everything is taken as it is.
  return mode === 'replace' && choices.includes('theirs') ? 'theirs' : choices[0];
}

function draftOf(
  { meeting: { id, kind, state, theirs, merged }, choice }: Chosen,
  {
    mode,
    of,
    ...linking
  }: {
    readonly mode: ArrivalChoice['mode'];
    readonly of: CopyScope;
    readonly doubles: ReadonlyMap<string, string>;
    readonly registry: Registry;
  },
): readonly ArrivingDraft[] {
  if (state === 'same' || choice === 'mine') return [];
  if (choice === 'theirs' && merged !== null && mode === 'beside') return [{ id, kind, snapshot: merged }];
  const snapshot = snapshotOf(theirs);
  const body = linkedToDoubles(kind, snapshot.body, linking);
  return choice === 'both'
    ? [{ id: idOfDouble(theirs), kind, snapshot: { ...snapshot, body: namedAsDouble(body, of) } }]
    : [{ id, kind, snapshot: { ...snapshot, body } }];
}

/**
 * What was declined stays unknown here, so that it is offered again; what was weighed against it is known to both. What
 * came in beside it is another draft from then on, and nothing that the one here was made from.
 */
function exchangedOf({ meeting, choice }: Chosen, { here, copy }: ArrivalPlan): Arrival['exchanged'] {
  const { id, state, mine, theirs } = meeting;
  const isDeclined =
    choice === 'mine' && (state === 'new' || state === 'newerThere' || state === 'comesBack');
  if (isDeclined || state === 'removedThere' || choice === 'both') return [];
  const row = here.exchanged.get(id) ?? null;
  const coming = { hashes: copy.hashes.get(id) ?? [], body: snapshotOf(theirs) };
  const next =
    choice === 'mine' && mine !== null && state !== 'same'
      ? withWeighed(id, row, { ...coming, mine: snapshotOf(mine) })
      : withExchange(id, row, coming);
  return row !== null && sameValue(row, next) ? [] : [next];
}

/** What the copy holds as it is here needs no writing, and what the maker keeps stays. */
function stayingOf(
  { meetings }: ArrivalPlan,
  drafts: readonly ArrivingDraft[],
  registry: Registry,
): readonly string[] {
  const coming = new Set(drafts.map(({ id }) => id));
  return [
    ...neededDocuments(registry).map(({ id }) => id),
    ...meetings.map(({ id }) => id).filter((id) => !coming.has(id)),
  ];
}

function goesOf(plan: ArrivalPlan, drafts: readonly ArrivingDraft[], registry: Registry): Arrival['goes'] {
  const needed = new Set(neededDocuments(registry).map(({ id }) => id));
  const removed = drafts.flatMap(({ id, snapshot }) => {
    const mine = plan.here.drafts.get(id);
    return snapshot.deleted && mine !== undefined && mine.deletedAt === undefined ? [mine] : [];
  });
  return [...plan.onlyHere.filter(({ id }) => !needed.has(id)), ...removed];
}
