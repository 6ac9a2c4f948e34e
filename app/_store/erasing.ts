import { eraseRecords } from '@/app/_transactions/eraseRecords';
import type { Bodies } from '@/lib/stored/registry';
import type { DocumentActions } from './documentStore';
import type { StoreCore } from './storeCore';

/** Takes a customer out of everything that is kept; there is no way back. */
export const erasing = <Kinds extends Bodies>(core: StoreCore): Pick<DocumentActions<Kinds>, 'erase'> => ({
  erase: async (customerId, day) => {
    const { kinds, now, connection, queue, tabState, hold } = core;
    await queue.flush();
    // What waits would be written over what was erased, with the names in it.
    const { pending, kept } = tabState();
    if (pending.length > 0)
      return { state: 'notKept', why: kept.state === 'notKept' ? kept.why : 'connectionLost' };
    const outcome = await connection.attempt('writeStrict', (tx) =>
      eraseRecords(tx, kinds, { customerId, day, at: now() }),
    );
    hold({ kept: core.settledKept(outcome.ok ? null : outcome.problem), takenBack: [] });
    if (!outcome.ok) return { state: 'notKept', why: outcome.problem };
    if (outcome.value === null) return { state: 'noSuchCustomer' };
    const { ids, papersKept, stillNamed } = outcome.value;
    await core.rereadAfter(ids);
    return { state: 'erased', papersKept, stillNamed };
  },
});
