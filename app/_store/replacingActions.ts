import { type Arriving, arrive } from '@/app/_transactions/arrive';
import { snapshotOf } from '@/lib/stored/documentChange';
import type { Bodies } from '@/lib/stored/registry';
import type { Stored } from '@/shared/schemas/stored';
import type { DocumentActions } from './documentStore';
import type { ReplaceOutcome } from './documentsState';
import { newDocuments } from './newDocuments';
import type { StoreCore } from './storeCore';

type ReplacingActions<Kinds extends Bodies> = Pick<DocumentActions<Kinds>, 'arrive' | 'putBeside'>;

/** What puts whole documents in the place of others, each as one step to undo. */
export function replacingActions<Kinds extends Bodies>(core: StoreCore): ReplacingActions<Kinds> {
  const { kinds, tab, now, connection, queue, hold } = core;

  const arriveHere: ReplacingActions<Kinds>['arrive'] = async (label, arriving, how) => {
    await queue.flush();
    const outcome = await connection.attempt('writeStrict', (tx) =>
      arrive(tx, kinds, { label, tab, at: now(), arriving, how }),
    );
    hold({ kept: core.settledKept(outcome.ok ? null : outcome.problem), takenBack: [] });
    if (!outcome.ok) return { state: 'notKept', why: outcome.problem };
    await core.rereadAfter(outcome.value.ids);
    const { clashing, isRenamed } = outcome.value;
    return { state: 'arrived', clashing, isRenamed };
  };
  const replace = async (...arrival: Parameters<typeof arriveHere>): Promise<ReplaceOutcome> => {
    const outcome = await arriveHere(...arrival);
    return outcome.state === 'arrived' ? { state: 'replaced' } : outcome;
  };

  return {
    arrive: arriveHere,
    putBeside: (label, documents) =>
      replace(
        label,
        { ...nothing, drafts: newDocuments(documents, kinds.registry, now()).map(asDraft) },
        { mode: 'beside' },
      ),
  };
}

const nothing: Arriving = {
  drafts: [],
  papers: [],
  entries: [],
  unreadable: [],
  files: [],
  exchanged: [],
};

const asDraft = (document: Stored): Arriving['drafts'][number] => ({
  id: document.id,
  kind: document.kind,
  snapshot: snapshotOf(document),
});
