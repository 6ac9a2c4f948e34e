import { issuePaper, type NewPaper } from '@/app/_transactions/issuePaper';
import { type Bodies, entryOf } from '@/lib/stored/registry';
import type { PaperNumber } from '@/shared/schemas/happened';
import type { DocumentActions } from './documentStore';
import type { IssueOutcome } from './documentsState';
import type { StoreCore } from './storeCore';

/** What goes out is on the disk before anybody is told that it went out. */
export function issuing<Papers extends Bodies>(
  core: StoreCore,
): Pick<DocumentActions<Bodies, Papers>, 'issue'> {
  const { kinds, tab, now, connection, queue, tabState, hold } = core;
  /** What is being issued, by its series. */
  const underWay = new Map<string, Promise<IssueOutcome>>();

  const issueNow = async (label: string, asked: NewPaper): Promise<IssueOutcome> => {
    // What is typed while this waits is kept as well.
    do await queue.flush();
    while (tabState().kept.state === 'keeping');
    const { kept, pending, status } = tabState();
    // A paper may not stand on edits that are not kept.
    if (pending.length > 0 || status.status !== 'ready') {
      return { state: 'notKept', why: kept.state === 'notKept' ? kept.why : 'connectionLost' };
    }
    core.keeping();
    const bugs: unknown[] = [];
    const paper = guarded(asked, kinds.paperKinds, (error) => bugs.push(error));
    const outcome = await connection.attempt('writeStrict', (tx) =>
      issuePaper(tx, kinds, { label, tab, at: now(), paper }),
    );
    const why = outcome.ok ? null : outcome.problem;
    // A text that cannot go out says nothing of what is kept.
    hold({ kept: core.settledKept(bugs.length > 0 || why === 'brokenText' ? null : why) });
    // What the caller's own functions threw is no failure of the disk.
    for (const bug of bugs) throw bug;
    if (!outcome.ok) return { state: 'notKept', why: outcome.problem };
    if (outcome.value.state === 'refused') return { state: 'notKept', why: outcome.value.why };
    core.wrote({ ...outcome.value, papers: [outcome.value.paper] }, { takenBack: [] });
    return { state: 'issued', paper: outcome.value.paper };
  };

  return {
    issue: (label, asked: NewPaper) => {
      // A second press while the first is under way means the same paper.
      const before = underWay.get(asked.series);
      if (before !== undefined) return before;
      const issuing = issueNow(label, asked).finally(() => underWay.delete(asked.series));
      underWay.set(asked.series, issuing);
      return issuing;
    },
  };
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
  return {
    ...paper,
    body: guard((number) => {
      const body: unknown = paper.body(number);
      return entryOf(paperKinds, paper.kind)?.schema.parse(body) ?? body;
    }),
    ...(paper.file === undefined ? {} : { file: guard((number) => paper.file?.(number)) }),
  };
}
