import type { SaveFailure } from '@/app/_backend/saveFailure';
import { issuePaper, type NewPaper, nextPaperNumber, UnreadNotes } from '@/app/_transactions/issuePaper';
import { type Bodies, entryOf } from '@/lib/stored/registry';
import type { PaperNumber } from '@/shared/schemas/happened';
import type { DocumentActions } from './documentStore';
import type { IssueOutcome, MadeOutcome } from './documentsState';
import { paperQueue } from './paperQueue';
import type { PaperToMake } from './paperToMake';
import type { StoreCore } from './storeCore';

/** Whoever is overtaken as often is told; more than one other tab at a time is hardly ever open. */
const MOST_TRIES = 5;

/** What goes out is on the disk before anybody is told that it went out. */
export function issuing<Papers extends Bodies>(
  core: StoreCore,
): Pick<DocumentActions<Bodies, Papers>, 'issue' | 'issueMade'> {
  const { kinds, tab, now, connection, queue, tabState, hold } = core;
  const inTurn = paperQueue<IssueOutcome>();
  const madeInTurn = paperQueue<MadeOutcome>();

  /** A paper may not stand on edits that are not kept. */
  const whatIsNotKept = async (): Promise<SaveFailure | null> => {
    // What is typed while this waits is kept as well.
    do await queue.flush();
    while (tabState().kept.state === 'keeping');
    const { kept, pending, status } = tabState();
    if (pending.length === 0 && status.status === 'ready') return null;
    return kept.state === 'notKept' ? kept.why : 'connectionLost';
  };

  const issueNow = async (label: string, asked: NewPaper, madeFor?: PaperNumber): Promise<MadeOutcome> => {
    const notKept = await whatIsNotKept();
    if (notKept !== null) return { state: 'notKept', why: notKept };
    core.keeping();
    const bugs: unknown[] = [];
    const paper = guarded(asked, kinds.paperKinds, (error) => bugs.push(error));
    const outcome = await connection.attempt('writeStrict', (tx) =>
      issuePaper(tx, kinds, {
        ...{ label, tab, at: now(), paper },
        ...(madeFor === undefined ? {} : { madeFor }),
      }).catch((error: unknown) => {
        if (error instanceof UnreadNotes) bugs.push(error);
        throw error;
      }),
    );
    const why = outcome.ok ? null : outcome.problem;
    // A text that cannot go out says nothing of what is kept.
    hold({ kept: core.settledKept(bugs.length > 0 || why === 'brokenText' ? null : why) });
    // What the caller's own functions threw is no failure of the disk.
    for (const bug of bugs) throw bug;
    if (!outcome.ok) return { state: 'notKept', why: outcome.problem };
    if (outcome.value.state === 'overtaken') return outcome.value;
    if (outcome.value.state === 'refused') return { state: 'notKept', why: outcome.value.why };
    core.wrote({ ...outcome.value, papers: [outcome.value.paper] }, { takenBack: [] });
    return { state: 'issued', paper: outcome.value.paper };
  };

  const makeAndIssue = async (
    label: string,
    paper: PaperToMake,
    onOvertaken?: () => void,
  ): Promise<MadeOutcome> => {
    for (let tries = 1; ; tries += 1) {
      const notKept = await whatIsNotKept();
      if (notKept !== null) return { state: 'notKept', why: notKept };
      const next = await connection.attempt('write', (tx) => nextPaperNumber(tx, kinds, paper));
      if (!next.ok) {
        hold({ kept: core.settledKept(next.problem) });
        return { state: 'notKept', why: next.problem };
      }
      const file = await paper.file(next.value);
      const asked: NewPaper = { ...paper, file: () => file };
      const outcome = await issueNow(label, asked, next.value);
      if (outcome.state !== 'overtaken' || tries >= MOST_TRIES) return outcome;
      onOvertaken?.();
    }
  };

  return {
    issue: (label, asked: NewPaper) =>
      inTurn(asked, async () => {
        const outcome = await issueNow(label, asked);
        // Its number is claimed with it, so none can come between.
        if (outcome.state === 'overtaken') throw new OvertakenWithoutWaiting(asked.series);
        return outcome;
      }),
    issueMade: (label, asked: PaperToMake, onOvertaken) =>
      madeInTurn(asked, () => makeAndIssue(label, asked, onOvertaken)),
  };
}

class PaperWithoutFile extends Error {
  override readonly name = 'PaperWithoutFile';
  constructor(kind: string) {
    super(`a paper of the kind “${kind}” goes out as a file, and there is none`);
  }
}

class OvertakenWithoutWaiting extends Error {
  override readonly name = 'OvertakenWithoutWaiting';
  constructor(series: string) {
    super(`a number of “${series}” was taken inside the transaction that claims it`);
  }
}

/** The same paper, telling what is wrong with it apart from what is wrong with the store. */
function guarded(
  paper: NewPaper,
  paperKinds: StoreCore['kinds']['paperKinds'],
  onBug: (error: unknown) => void,
): NewPaper {
  const guard =
    <Made>(make: (number: PaperNumber) => Made) =>
    (number: PaperNumber): Made => {
      try {
        return make(number);
      } catch (error) {
        onBug(error);
        throw error;
      }
    };
  const needsFile = entryOf(paperKinds, paper.kind)?.needsFile === true;
  return {
    ...paper,
    body: guard((number) => {
      const body: unknown = paper.body(number);
      return entryOf(paperKinds, paper.kind)?.schema.parse(body) ?? body;
    }),
    file: guard((number) => {
      const file = paper.file?.(number);
      if (needsFile && (file?.content.length ?? 0) === 0) throw new PaperWithoutFile(paper.kind);
      return file;
    }),
  };
}
