'use client';

import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { PageHead } from '@/app/_controls/PageHead';
import { RemovedNote } from '@/app/_controls/RemovedNote';
import type { PriceListRecord } from '@/app/_documents/documentsByKind';
import { newId } from '@/app/_documents/newId';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { freeName } from '@/lib/drafts/freeName';
import { priceListSchema } from '@/shared/schemas/priceList';
import { PapersWithoutList } from './PapersWithoutList';
import { PriceListLine } from './PriceListLine';
import styles from './PriceLists.module.css';
import { paperOfLocale } from './paperOfLocale';

/** Every price list of the maker. */
export function PriceListsScreen() {
  return <WithWorkspace>{(workspace) => <PriceLists workspace={workspace} />}</WithWorkspace>;
}

// Helpers

function PriceLists({ workspace }: Readonly<{ workspace: ReadyWorkspace }>) {
  const router = useRouter();
  const [removed, setRemoved] = useState<string | null>(null);
  const { lists, workshop } = workspace;
  const begin = () => {
    const id = newId();
    const name = freeName(
      'Price list',
      lists.map(({ list }) => list.name),
    );
    const body = priceListSchema.parse({ name, paper: paperOfLocale(workshop.locale) });
    if (workspace.addPriceList(id, body).state === 'shown') router.push(`/price-lists/${id}`);
  };
  const remove = ({ id, list }: PriceListRecord) => {
    workspace.remove({ kind: 'priceList', id }, `Remove ${list.name}`);
    setRemoved(list.name);
  };
  return (
    <>
      <PageHead
        title="Price lists"
        line="What you hand to customers: prices from several jobs on one page, dated, and kept as they went out."
        aside={
          <Button kind="strong" onPress={begin}>
            New price list
          </Button>
        }
      />
      <RemovedNote
        what={workspace.undoLabel === `Remove ${removed}` ? removed : null}
        onUndo={() => void workspace.undo()}
      />
      <UnreadableRecords
        workspace={{
          ...workspace,
          unreadable: workspace.unreadable.filter(
            ({ kind }) => kind === 'priceList' || kind === 'priceListVersion',
          ),
        }}
        level={2}
      />
      {lists.length === 0 ? (
        <p className={styles.none}>None yet.</p>
      ) : (
        <ul className={styles.list}>
          {lists.map((kept) => (
            <PriceListLine key={kept.id} kept={kept} workspace={workspace} onRemove={() => remove(kept)} />
          ))}
        </ul>
      )}
      <PapersWithoutList workspace={workspace} />
    </>
  );
}
