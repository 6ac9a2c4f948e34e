'use client';

import Link from 'next/link';
import { PageHead } from '@/app/_controls/PageHead';
import { useIdInAddress } from '@/app/_documents/useIdInAddress';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { PapersOfGoneList } from './PapersOfGoneList';
import { PriceListEditor } from './PriceListEditor';

/** The price list that the address names. */
export const PriceListOfAddress = () => <PriceListScreen listId={useIdInAddress('/price-lists/')} />;

/** One price list: what the next version offers, and what went out. */
export function PriceListScreen({ listId }: Readonly<{ listId: string }>) {
  return (
    <WithWorkspace>
      {(workspace) => {
        const kept = workspace.lists.find(({ id }) => id === listId);
        if (kept !== undefined) return <PriceListEditor key={listId} kept={kept} workspace={workspace} />;
        const issued = workspace.issued.get(listId);
        const records = workspace.unreadable.filter(({ id }) => id === listId);
        return (
          <>
            <PageHead
              title={records.length > 0 ? 'This price list cannot be read' : 'This price list is not here'}
              line={
                records.length > 0
                  ? 'Its record stays kept as it is. Save it as a file, so that nothing of it is lost.'
                  : issued === undefined
                    ? 'It was removed, or is kept on another device. If you have just removed it, undo brings it back.'
                    : 'What went out of it is kept. If you have just removed it, undo brings it back.'
              }
            />
            <UnreadableRecords workspace={{ ...workspace, unreadable: records }} level={2} />
            {issued !== undefined && (
              <PapersOfGoneList listId={listId} issued={issued} workspace={workspace} />
            )}
            <p>
              <Link href="/price-lists">To the price lists</Link>
            </p>
          </>
        );
      }}
    </WithWorkspace>
  );
}
