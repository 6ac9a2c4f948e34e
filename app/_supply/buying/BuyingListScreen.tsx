'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { useIdInAddress } from '@/app/_documents/useIdInAddress';
import { NotHere } from '@/app/_keeping/NotHere';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { useSupply } from '@/app/_supply/supplyOnScreen';
import { BuyingListPage } from './BuyingListPage';
import { buyingOnScreen } from './buyingOnScreen';

/** The buying list that the address names. */
export const BuyingListOfAddress = () => <BuyingListScreen listId={useIdInAddress('/making/buying/')} />;

/** What is to be bought for some jobs. */
export function BuyingListScreen({ listId }: Readonly<{ listId: string }>) {
  return <WithWorkspace>{(workspace) => <ListHere key={listId} {...{ workspace, listId }} />}</WithWorkspace>;
}

// Helpers

type ListHereProps = Readonly<{ workspace: ReadyWorkspace; listId: string }>;

function ListHere({ workspace, listId }: ListHereProps) {
  const [removed, setRemoved] = useState<string | null>(null);
  const supply = useSupply(workspace);
  const list = workspace.buyingLists[listId];
  const undoes = removed !== null && workspace.undoLabel === removed;
  if (list !== undefined)
    return <BuyingListPage on={buyingOnScreen(supply, workspace, listId, list)} onRemoved={setRemoved} />;
  return (
    <NotHere
      {...{ workspace, id: listId }}
      what="buying list"
      isRemoved={undoes}
      aside={undoes && <Button onPress={() => void workspace.undo()}>Bring it back</Button>}
      back={{ href: '/making/buying', words: 'To the buying lists' }}
    />
  );
}
