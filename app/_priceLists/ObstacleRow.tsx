'use client';

import Link from 'next/link';
import type { ReactNode } from 'react';
import { Button } from '@/app/_controls/Button';
import { FindingRow } from '@/app/_controls/FindingRow';
import { documentAddress } from '@/app/_documents/documentAddress';
import { fieldAddress } from '@/app/_documents/fieldAddress';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import {
  type ItemOffer,
  mixedTaxWords,
  noItemsWords,
  refusalWords,
} from '@/app/_words/priceLists/offerWords';
import type { IssueObstacle } from '@/lib/priceLists/nextVersion';
import type { PriceList, PriceListItem } from '@/shared/schemas/priceList';
import { capItems } from './capItems';
import styles from './PriceLists.module.css';

type ObstacleRowProps = Readonly<{
  id: string;
  list: PriceList;
  offers: readonly ItemOffer[];
  obstacle: IssueObstacle;
  workspace: ReadyWorkspace;
}>;

/** One thing that stands in the way of issuing a list, and the way out of it. */
export function ObstacleRow({ id, list, offers, obstacle, workspace }: ObstacleRowProps) {
  const { workshop } = workspace;
  const nameOf = (itemId: string) => itemName(list, itemId, workspace);
  switch (obstacle.kind) {
    case 'noItems':
      return (
        <FindingRow severity="stop" {...noItemsWords}>
          <p className={styles.ways}>
            <a href="#add-item">Choose a line of a job</a>
          </p>
        </FindingRow>
      );
    case 'mixedTax':
      return (
        <FindingRow
          severity="stop"
          {...mixedTaxWords(obstacle.items.map(({ itemId, taxMode }) => ({ name: nameOf(itemId), taxMode })))}
        >
          <p className={styles.ways}>
            {list.items
              .filter((item) => obstacle.items.some(({ itemId }) => itemId === item.id))
              .map((item) => (
                <Link key={item.id} href={`/jobs/${item.jobId}#job-channelId`}>
                  How {nameOf(item.id)} is sold
                </Link>
              ))}
          </p>
        </FindingRow>
      );
    case 'item': {
      const index = list.items.findIndex((one) => one.id === obstacle.itemId);
      const item = list.items[index];
      const offer = offers[index];
      const words = offer === undefined ? null : refusalWords(offer, nameOf(obstacle.itemId), workshop);
      if (item === undefined || offer === undefined || words === null) return null;
      const takeOff = () =>
        workspace.changePriceList(id, `Take ${nameOf(item.id)} off the list`, (now) => ({
          ...now,
          items: now.items.filter((one) => one.id !== item.id),
        }));
      return (
        <FindingRow
          severity="stop"
          {...words}
          fix={
            offer.kind === 'falls'
              ? { label: 'Sell it under a cap', onFix: () => capItems(workspace, [item]) }
              : undefined
          }
        >
          <p className={styles.ways}>
            {wayOut(offer, item, workspace)}
            <Button kind="quiet" onPress={takeOff}>
              Take <bdi>{nameOf(item.id)}</bdi> off the list
            </Button>
          </p>
        </FindingRow>
      );
    }
    default:
      return obstacle satisfies never;
  }
}

// Helpers

function itemName(list: PriceList, itemId: string, { jobs }: ReadyWorkspace): string {
  const item = list.items.find(({ id }) => id === itemId);
  const job = jobs.find(({ id }) => id === item?.jobId)?.job;
  return job?.lines.find(({ id }) => id === item?.lineId)?.name ?? 'an item';
}

/** Where it is mended; nothing where taking the item off is all that can be done. */
function wayOut(offer: ItemOffer, { jobId }: PriceListItem, { jobs, workshop }: ReadyWorkspace): ReactNode {
  const job = jobs.find(({ id }) => id === jobId)?.job;
  if (job === undefined) return null;
  switch (offer.kind) {
    case 'stopped': {
      const where = offer.why?.where;
      const field =
        where === undefined
          ? null
          : where.document === 'job'
            ? documentAddress({ kind: 'job', id: jobId, path: where.path }, jobs)
            : fieldAddress(where);
      return (
        <Link href={field ?? `/jobs/${jobId}#checks`}>
          {field === null || where?.document === 'job' ? `Mend it in ${job.name}` : 'Mend it there'}
        </Link>
      );
    }
    case 'noTaxMode': {
      const index = workshop.channels.findIndex(({ id }) => id === job.channelId);
      const field = fieldAddress({ document: 'workshop', path: ['channels', index, 'taxMode'] });
      return <Link href={field ?? '/workshop'}>Say it in the workshop</Link>;
    }
    case 'noLine':
      return <Link href={`/jobs/${jobId}`}>To {job.name}</Link>;
    case 'falls':
    case 'loses':
      return <Link href={`/jobs/${jobId}#prices`}>Its prices in {job.name}</Link>;
    case 'frozen':
    case 'asked':
    case 'gone':
    case 'failed':
      return null;
    default:
      return offer satisfies never;
  }
}
