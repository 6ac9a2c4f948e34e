'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { PageHead } from '@/app/_controls/PageHead';
import { RemovedNote } from '@/app/_controls/RemovedNote';
import { useGoToHash } from '@/app/_controls/useGoToHash';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { MakingLinks } from '@/app/_makingFrame/MakingLinks';
import { openCount } from '@/app/_words/supply/deliveryWords';
import { isOpen } from '@/lib/buying/received/claims';
import { ConsumableList } from './consumables/ConsumableList';
import { DeliveryList } from './goods/DeliveryList';
import { GoodsInNote } from './goods/GoodsInNote';
import { OpenOrders } from './ordering/OpenOrders';
import styles from './Supply.module.css';
import { SupplierList } from './suppliers/SupplierList';
import { goodsForm, isBegun } from './supplyForms';
import { useSupply } from './supplyOnScreen';

/** Who sells to the maker, what is used up, what came and what is still open. */
export function SuppliersScreen() {
  return <WithWorkspace>{(workspace) => <Suppliers workspace={workspace} />}</WithWorkspace>;
}

// Helpers

/** Whatever this page is told by. */
const SUPPLY_KINDS: ReadonlySet<string> = new Set([
  ...['supplier', 'consumable', 'supplyOrder', 'goodsIn', 'faultClaim', 'rateTaken', 'stockMove', 'takeBack'],
]);

/** What is counted at the door, whatever it answers. */
const DOOR = goodsForm('door');

/** Deliveries shown before the others are asked for. */
const FEW = 5;

function Suppliers({ workspace }: Readonly<{ workspace: ReadyWorkspace }>) {
  useGoToHash();
  const supply = useSupply(workspace);
  const [isNoting, setNoting] = useState(() => isBegun(DOOR));
  const [showsAll, setShowsAll] = useState(false);
  const [removed, setRemoved] = useState<string | null>(null);
  const claims = supply.deliveries.filter(isOpen);
  const others = supply.deliveries.filter((standing) => !isOpen(standing));
  const shown = showsAll ? others : others.slice(0, FEW);
  return (
    <>
      <MakingLinks here="/making/suppliers" />
      <PageHead
        title="Suppliers"
        line={openCount(supply.openOrders.length, claims.length)}
        aside={
          <Button kind="strong" expanded={isNoting} onPress={() => setNoting(!isNoting)}>
            Goods in
          </Button>
        }
      />
      <UnreadableRecords workspace={workspace} level={2} of={SUPPLY_KINDS} />
      {isNoting && (
        <div className={styles.framed}>
          <GoodsInNote supply={supply} form={DOOR} onDone={() => setNoting(false)} />
        </div>
      )}
      {supply.openOrders.length > 0 && (
        <section aria-labelledby="to-come">
          <h2 className={styles.heading} id="to-come">
            Still to come
          </h2>
          <OpenOrders supply={supply} />
        </section>
      )}
      {claims.length > 0 && (
        <section aria-labelledby="open-claims">
          <h2 className={styles.heading} id="open-claims">
            Open claims
          </h2>
          <DeliveryList supply={supply} standings={claims} />
        </section>
      )}
      <SupplierList supply={supply} onRemoved={setRemoved} />
      <ConsumableList supply={supply} onRemoved={setRemoved} />
      <RemovedNote
        what={workspace.undoLabel === `Remove ${removed}` ? removed : null}
        onUndo={() => void workspace.undo()}
      />
      {others.length > 0 && (
        <section aria-labelledby="came">
          <h2 className={styles.heading} id="came">
            What came
          </h2>
          <DeliveryList supply={supply} standings={shown} />
          {shown.length < others.length && (
            <Button kind="quiet" onPress={() => setShowsAll(true)}>
              Show all {others.length}
            </Button>
          )}
        </section>
      )}
    </>
  );
}
