'use client';

import { useIdInAddress } from '@/app/_documents/useIdInAddress';
import { NotHere } from '@/app/_keeping/NotHere';
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
        return (
          <NotHere
            {...{ workspace, id: listId }}
            what="price list"
            line={
              issued === undefined
                ? undefined
                : 'What went out of it is kept. If you have just removed it, undo brings it back.'
            }
            back={{ href: '/price-lists', words: 'To the price lists' }}
          >
            {issued !== undefined && (
              <PapersOfGoneList listId={listId} issued={issued} workspace={workspace} />
            )}
          </NotHere>
        );
      }}
    </WithWorkspace>
  );
}
