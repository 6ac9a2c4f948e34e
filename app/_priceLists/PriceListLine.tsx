'use client';

import { Button } from '@/app/_controls/Button';
import { OpenLine, OpenName } from '@/app/_controls/OpenLine';
import { Carry } from '@/app/_copies/Carry';
import type { PriceListRecord } from '@/app/_documents/documentsByKind';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { formatterFor } from '@/app/_words/formatter';
import { paperNumberText } from '@/app/_words/paperNumberText';
import { standingLine } from '@/app/_words/priceLists/standingLineWords';
import styles from './PriceLists.module.css';
import { useListStates } from './useListStates';

type PriceListLineProps = Readonly<{
  kept: PriceListRecord;
  workspace: ReadyWorkspace;
  onRemove: () => void;
}>;

/** One price list: what it is called, what went out last, and whether that still holds. */
export function PriceListLine({ kept: { id, list, issued }, workspace, onRemove }: PriceListLineProps) {
  const formatter = formatterFor(workspace.workshop);
  const newest = issued.newest?.body;
  const standings = useListStates(workspace, newest);
  return (
    <OpenLine className={styles.line}>
      <div>
        <OpenName href={`/price-lists/${id}`}>{list.name}</OpenName>
        <p className={styles.quiet}>
          {newest === undefined
            ? `${issued.withdrawn.length > 0 ? 'nothing of it is in force' : 'not issued yet'}, ${formatter.count(list.items.length, 'item')}`
            : `version ${paperNumberText(newest.number)}, ${formatter.count(newest.items.length, 'item')}, issued ${formatter.day(newest.issuedOn)}, valid until ${formatter.day(newest.validUntil)}`}
        </p>
      </div>
      <p className={styles.state}>{newest !== undefined && standingLine(standings, formatter)}</p>
      <div className={styles.ends}>
        <Carry store={workspace} what={{ kind: 'priceList', id, name: list.name }} isOneOfMany />
        <Button kind="quiet" onPress={onRemove}>
          Remove <span className="visuallyHidden">{list.name}</span>
        </Button>
      </div>
    </OpenLine>
  );
}
