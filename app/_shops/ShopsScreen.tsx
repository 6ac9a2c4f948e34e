'use client';

import Link from 'next/link';
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { classes } from '@/app/_controls/classes';
import { PageHead } from '@/app/_controls/PageHead';
import { newId } from '@/app/_documents/newId';
import { EntryForm } from '@/app/_fields/EntryForm';
import { TextField } from '@/app/_fields/TextField';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { dueAnswer, lateLines, nameTaken, shelfAnswer } from '@/app/_words/stall/shopWords';
import { isNameTaken } from '@/lib/stall/shops/shopNames';
import { textLimits } from '@/shared/limits';
import { shopSchema } from '@/shared/schemas/shop';
import styles from './Shops.module.css';
import { type ShopOnScreen, useShops } from './shopOnScreen';

/** Every shop that sells on consignment. */
export function ShopsScreen() {
  return <WithWorkspace>{(workspace) => <Shops workspace={workspace} />}</WithWorkspace>;
}

// Helpers

function Shops({ workspace }: Readonly<{ workspace: ReadyWorkspace }>) {
  const shops = useShops(workspace);
  const [isNew, setNew] = useState(false);
  const here = shops.toSorted((a, b) => a.shop.name.localeCompare(b.shop.name, a.locale));
  return (
    <>
      <PageHead
        title="Shops"
        line="What lies on consignment, and what is owed for it."
        aside={
          <Button kind="strong" expanded={isNew} onPress={() => setNew(!isNew)}>
            New shop
          </Button>
        }
      />
      {isNew && <NewShop workspace={workspace} />}
      <UnreadableRecords
        workspace={{ ...workspace, unreadable: workspace.unreadable.filter(({ kind }) => kind === 'shop') }}
        level={2}
      />
      <div className={styles.card}>
        {here.length === 0 && <p className={styles.none}>No shop sells for you yet.</p>}
        <ul className={styles.list}>
          {here.map((on) => (
            <ShopLine key={on.shopId} on={on} />
          ))}
        </ul>
      </div>
    </>
  );
}

function ShopLine({ on }: Readonly<{ on: ShopOnScreen }>) {
  const { shopId, shop, standing, late, formatter, locale } = on;
  const shelf = shelfAnswer(standing, formatter, locale);
  const due = dueAnswer(standing, locale);
  return (
    <li className={styles.line}>
      <h2>
        <Link href={`/stall/shops/${shopId}`}>
          <bdi>{shop.name}</bdi>
        </Link>
      </h2>
      <p className={styles.quiet}>
        {shelf.key}
        {shelf.after}. {due.key}
        {due.after}.
      </p>
      {lateLines(late, formatter).map((line) => (
        <p key={line} className={styles.caution}>
          {line}
        </p>
      ))}
    </li>
  );
}

function NewShop({ workspace }: Readonly<{ workspace: ReadyWorkspace }>) {
  const router = useRouter();
  const [name, setName] = useState('');
  const isTaken = isNameTaken(name.trim(), Object.values(workspace.shops));
  const missing = name.trim() === '' ? 'The name is missing.' : isTaken ? nameTaken(name.trim()) : undefined;
  const add = () => {
    const id = newId();
    const channel = workspace.workshop.channels.find(({ kind }) => kind === 'consignment');
    const body = shopSchema.parse({ name: name.trim(), channelId: channel?.id ?? null });
    if (workspace.edit(body.name, [{ do: 'add', kind: 'shop', id, body }]).state === 'shown')
      router.push(`/stall/shops/${id}`);
  };
  return (
    <EntryForm
      label="New shop"
      className={classes(styles.form, styles.adding)}
      missing={missing}
      onEnter={add}
    >
      <TextField
        label="Name of the shop"
        value={name}
        {...textLimits(shopSchema, ['name'])}
        caution={isTaken ? missing : undefined}
        onCommit={setName}
      />
      <div className={styles.acts}>
        <Button kind="strong" type="submit" blockedBy={missing}>
          Add
        </Button>
      </div>
    </EntryForm>
  );
}
