'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { useIdInAddress } from '@/app/_documents/useIdInAddress';
import { NotHere } from '@/app/_keeping/NotHere';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { ShopPage } from './ShopPage';
import { useShops } from './shopOnScreen';

/** The shop that the address names. */
export const ShopOfAddress = () => <ShopScreen shopId={useIdInAddress('/stall/shops/')} />;

/** One shop that sells on consignment. */
export function ShopScreen({ shopId }: Readonly<{ shopId: string }>) {
  return <WithWorkspace>{(workspace) => <ShopHere key={shopId} {...{ workspace, shopId }} />}</WithWorkspace>;
}

// Helpers

type ShopHereProps = Readonly<{ workspace: ReadyWorkspace; shopId: string }>;

function ShopHere({ workspace, shopId }: ShopHereProps) {
  const [removed, setRemoved] = useState<string | null>(null);
  const undoes = removed !== null && workspace.undoLabel === removed;
  const on = useShops(workspace).find((one) => one.shopId === shopId);
  if (on !== undefined) return <ShopPage on={on} onRemoved={setRemoved} />;
  return (
    <NotHere
      {...{ workspace, id: shopId }}
      what="shop"
      isRemoved={undoes}
      aside={undoes && <Button onPress={() => void workspace.undo()}>Bring it back</Button>}
      back={{ href: '/stall/shops', words: 'To the shops' }}
    />
  );
}
