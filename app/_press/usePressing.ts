'use client';

import { useMemo, useState } from 'react';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { EditOutcome } from '@/app/_store/documentsState';
import { WAITING_DEVICE } from '@/app/_store/happenedState';
import { notNotedWords } from '@/app/_words/orders/notes/orderNoteWords';
import { tappedWords } from '@/app/_words/press/pressWords';
import type { EntryBodies } from '@/lib/kinds/entryKinds';
import {
  type AtPress,
  afterUndo,
  afterVerdict,
  NOTHING_AT_PRESS,
  sizeToJudge,
  turnUp,
} from '@/lib/pressing/atPress';
import { causeNamed } from '@/lib/pressing/causeNamed';
import { foldPressings, type PressedRun, type PressedTurn } from '@/lib/pressing/foldPressings';
import { inPressOrder, type PressedEntry } from '@/lib/pressing/pressedEntry';
import { turnKey } from '@/lib/pressing/pressTurns';
import type { NewEntry } from '@/lib/stored/newEntries';
import type { Entry } from '@/shared/schemas/happened';
import type { BlankFault, Pressing, RunStep } from '@/shared/schemas/making/runEvents';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import type { PressFault } from '@/shared/tables/faults';
import { useAtPress } from './useAtPress';

/** The standard a run was begun with. */
export interface FrozenStandard {
  readonly id: string;
  readonly body: RunStandard;
}

type Step = RunStep['step'];
type LastNoted = Entry<'pressing', Pressing> | Entry<'blankFault', BlankFault>;

/** What everything at the press works with. */
export interface AtThePress {
  readonly workspace: ReadyWorkspace;
  readonly runId: string;
  readonly standard: FrozenStandard;
  readonly run: PressedRun;
  readonly turn: PressedTurn;
  readonly steps: readonly Entry<'runStep', RunStep>[];
  /** Others that began the run too; the standard is the newest. */
  readonly otherStandards: number;
  /** What is in and before the press, and how that is changed. */
  readonly at: AtPress;
  readonly setAt: (at: AtPress) => void;
  /** The size that the next verdict is for; null where the print has none. */
  readonly judged: string | null;
  /** The last that this device noted and that counts, which undo takes back; null where there is none. */
  readonly last: LastNoted | null;
  /** The step that stopped the press, while it is stopped. */
  readonly stopped: Extract<Step, { what: 'stopped' }> | null;
  /** Why the last tap was not taken; null where it was. */
  readonly problem: string | null;
  readonly judge: (result: Pressing['result']) => void;
  /** Says what was wrong with a piece, in the place of what was noted of it. */
  readonly nameFault: (entry: PressedEntry, fault: PressFault) => void;
  /** A piece that was noted as lost is good, or was a faulty blank that was never pressed. */
  readonly noteInstead: (entry: PressedEntry, what: 'good' | 'blankFault') => void;
  readonly blankFaulty: (size: string) => void;
  /** Another print is up; what lay in the press is forgotten, and no count is. */
  readonly goTo: (turn: PressedTurn) => void;
  readonly step: (label: string, step: Step, day: string) => boolean;
  readonly undo: () => void;
}

/** A run at the press as this device sees it, and how one taps. */
export function usePressing(
  workspace: ReadyWorkspace,
  runId: string,
  standard: FrozenStandard,
): AtThePress | null {
  const { note } = workspace;
  const device = workspace.device?.id ?? WAITING_DEVICE;
  const own = useOwn(workspace, runId, device);
  const { pressings, faults, steps } = own;
  const run = useMemo(() => foldPressings(standard.body, pressings, faults), [standard, pressings, faults]);
  const [at, setAt] = useAtPress(runId);
  const [problem, setProblem] = useState<string | null>(null);
  const last = inPressOrder([...pressings, ...faults].filter((one) => one.device === device)).at(-1) ?? null;
  const turn = turnUp(run, at, last?.kind === 'pressing' ? turnKey(last.body) : null);
  if (turn === undefined) return null;
  const settle = (outcome: EditOutcome): boolean => {
    setProblem(outcome.state === 'shown' ? null : notNotedWords(outcome.state));
    return outcome.state === 'shown';
  };
  const noteAll = (label: string, entries: readonly NewEntry<EntryBodies>[]) => settle(note(label, entries));
  const judged = sizeToJudge(turn, at);
  const stop = steps.findLast(({ body: { step } }) => step.what === 'stopped' || step.what === 'goneOn')?.body
    .step;
  const faultBody = (size: string): BlankFault => ({
    ...{ runId, blankId: turn.blankId, size, lot: null, pieces: 1, fault: null },
  });
  return {
    otherStandards:
      workspace.papers.runStandard.filter(({ withdrawn, body }) => !withdrawn && body.runId === runId)
        .length - 1,
    ...{ workspace, runId, standard, run, turn, steps, at, setAt, judged, last, problem },
    stopped: stop?.what === 'stopped' ? stop : null,
    judge: (result) => {
      if (judged === null) return;
      const { jobId, lineId, placementId } = turn;
      const place = { runId, standardId: standard.id, jobId, lineId, placementId, size: judged };
      const body: Pressing = { ...place, result, fault: null };
      if (noteAll(tappedWords(body), [{ kind: 'pressing', body }]))
        setAt(afterVerdict(at, result !== 'good'));
    },
    nameFault: (entry, fault) => {
      const noted = causeNamed(entry, fault);
      if (noteAll(tappedWords(noted[1].body), noted)) setAt({ ...at, isAsking: false });
    },
    noteInstead: (entry, what) => {
      const good: Pressing = { pressedAt: entry.at, ...entry.body, result: 'good', fault: null };
      const noted: NewEntry<EntryBodies> =
        what === 'good'
          ? { kind: 'pressing', body: good }
          : { kind: 'blankFault', body: faultBody(entry.body.size) };
      const label = what === 'good' ? tappedWords(good) : `${entry.body.size}, faulty blank`;
      if (noteAll(label, [takeBack(entry), noted])) setAt({ ...at, isAsking: false });
    },
    blankFaulty: (size) =>
      void noteAll(`${size}, faulty blank`, [{ kind: 'blankFault', body: faultBody(size) }]),
    goTo: ({ key }) => setAt({ ...NOTHING_AT_PRESS, turn: key }),
    step: (label, step, day) =>
      noteAll(label, [{ kind: 'runStep', body: { runId, standardId: standard.id, day, step } }]),
    undo: () => {
      if (last === null) return;
      const isPiece = last.kind === 'pressing';
      if (noteAll('Undo at the press', [takeBack(last)]))
        setAt(afterUndo(at, isPiece ? last.body.size : null));
    },
  };
}

// Helpers

const takeBack = ({ id }: Pick<Entry, 'id'>) => ({ kind: 'takeBack' as const, body: { entryId: id } });

/** What was noted of the run; what waits before this device counted anything is of this device like the rest. */
function useOwn({ entries }: ReadyWorkspace, runId: string, device: string) {
  const { pressing, blankFault, runStep } = entries;
  return useMemo(() => {
    const ownOf = <Of extends Pick<Entry, 'device'> & { readonly body: { readonly runId: string | null } }>(
      all: readonly Of[],
    ): readonly Of[] =>
      all
        .filter(({ body }) => body.runId === runId)
        .map((one) => (one.device === WAITING_DEVICE ? { ...one, device } : one));
    return { pressings: ownOf(pressing), faults: ownOf(blankFault), steps: ownOf(runStep) };
  }, [pressing, blankFault, runStep, runId, device]);
}
