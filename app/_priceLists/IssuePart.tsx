'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { formatterFor } from '@/app/_words/formatter';
import type { ItemOffer } from '@/app/_words/priceLists/offerWords';
import { saveFailureWords } from '@/app/_words/store/saveFailureWords';
import { versionSeries } from '@/lib/kinds/priceList/versionSeries';
import type { NextVersion } from '@/lib/priceLists/nextVersion';
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
  next: NextVersion;
  /** What it will likely be called; the number is given when it is issued. */
  name: string;
  workspace: ReadyWorkspace;
  onIssued: (paperId: string) => void;
}>;

/** Freezes the draft as the next version; all that stands in its way is told at once, each with its way out. */
export function IssuePart({ id, list, offers, isBusy, next, name, workspace, onIssued }: IssuePartProps) {
  const [state, setState] = useState<Issuing>({ kind: 'none' });
  const obstacles = next.kind === 'refused' ? next.obstacles : [];
  const falling = list.items.filter((_, index) => offers[index]?.kind === 'falls');
  const isIssuing = state.kind === 'issuing';
  const issue = async () => {
    if (next.kind === 'refused') {
      setState({ kind: 'refused' });
      document.getElementById('obstacles-heading')?.focus();
      return;
    }
    setState({ kind: 'issuing' });
    const outcome = await workspace.issue(`Issue a version of ${list.name}`, {
      kind: 'priceListVersion',
      about: { kind: 'priceList', id },
      series: versionSeries(id),
      body: next.version,
    });
    setState(outcome.state === 'issued' ? { kind: 'none' } : { kind: 'notKept', why: outcome.why });
    if (outcome.state === 'issued') onIssued(outcome.paper.id);
  };
  const things = formatterFor(workspace.workshop).count(obstacles.length, 'thing');
  return (
    <>
      <div className={styles.acts}>
        <Button
          kind="strong"
          blockedBy={isIssuing ? 'It is being issued.' : isBusy ? 'The prices are being made.' : undefined}
          describedBy="issue-told"
          onPress={() => void issue()}
        >
          {isIssuing ? 'Issuing…' : `Issue version ${name}`}
        </Button>
        <p id="issue-told" role="status">
          {toldOf(state, next, isBusy)}
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

// Helpers

type Issuing =
  | { readonly kind: 'none' | 'issuing' }
  /** Asked for while something stood in the way. */
  | { readonly kind: 'refused' }
  | { readonly kind: 'notKept'; readonly why: keyof typeof saveFailureWords };

function toldOf(state: Issuing, next: NextVersion, isBusy: boolean): string | null {
  if (state.kind === 'issuing') return null;
  // Paper and number are kept together or not at all, so that no number is lost.
  if (state.kind === 'notKept') return `It is not issued. ${saveFailureWords[state.why]}`;
  if (next.kind === 'ready') return isBusy ? null : 'Nothing stands in the way.';
  return state.kind === 'refused' && next.obstacles.length > 0
    ? 'It is not issued: see what stands in the way.'
    : null;
}
