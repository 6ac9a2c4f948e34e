'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { formatterFor } from '@/app/_words/formatter';
import type { ItemOffer } from '@/app/_words/priceLists/offerWords';
import type { Issued } from '@/lib/priceLists/issuePriceList';
import type { PriceList } from '@/shared/schemas/priceList';
import { capItems } from './capItems';
import { ObstacleRow } from './ObstacleRow';
import styles from './PriceLists.module.css';

type IssuePartProps = Readonly<{
  id: string;
  list: PriceList;
  offers: readonly ItemOffer[];
  /** True while the prices are being made. */
  isBusy: boolean;
  issued: Issued;
  workspace: ReadyWorkspace;
  onIssued: (number: number) => void;
}>;

/** Freezes the draft as the next version; all that stands in its way is told at once, each with its way out. */
export function IssuePart({ id, list, offers, isBusy, issued, workspace, onIssued }: IssuePartProps) {
  const [isRefused, setRefused] = useState(false);
  const number = (list.versions.at(-1)?.number ?? 0) + 1;
  const obstacles = issued.kind === 'refused' ? issued.obstacles : [];
  const falling = list.items.filter((_, index) => offers[index]?.kind === 'falls');
  const issue = () => {
    setRefused(issued.kind === 'refused');
    if (issued.kind === 'refused') {
      document.getElementById('obstacles-heading')?.focus();
      return;
    }
    const outcome = workspace.changePriceList(id, `Issue version ${number}`, (now) => ({
      ...now,
      versions: [...now.versions, issued.version],
    }));
    if (outcome.state === 'shown') onIssued(number);
  };
  const things = formatterFor(workspace.workshop).count(obstacles.length, 'thing');
  return (
    <>
      <div className={styles.acts}>
        <Button
          kind="strong"
          blockedBy={isBusy ? 'The prices are being made.' : undefined}
          describedBy="issue-told"
          onPress={issue}
        >
          Issue version {number}
        </Button>
        <p id="issue-told" role="status">
          {isRefused && obstacles.length > 0
            ? 'It is not issued: see what stands in the way.'
            : issued.kind === 'issued' && !isBusy
              ? 'Nothing stands in the way.'
              : null}
        </p>
      </div>
      {obstacles.length > 0 && (
        <>
          <h3 className={styles.sub} id="obstacles-heading" tabIndex={-1}>
            {things} {obstacles.length === 1 ? 'stands' : 'stand'} in the way
          </h3>
          <ul className={styles.findings}>
            {obstacles.map((obstacle) => (
              <ObstacleRow
                key={obstacle.kind === 'item' ? obstacle.itemId : obstacle.kind}
                {...{ id, list, offers, obstacle, workspace }}
              />
            ))}
          </ul>
          {falling.length > 1 && (
            <Button onPress={() => capItems(workspace, falling)}>
              Sell all {falling.length} under a cap
            </Button>
          )}
        </>
      )}
    </>
  );
}
