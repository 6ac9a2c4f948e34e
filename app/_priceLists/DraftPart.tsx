'use client';

import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { ItemOffer } from '@/app/_words/priceLists/offerWords';
import type { NextVersion } from '@/lib/priceLists/nextVersion';
import type { PriceList } from '@/shared/schemas/priceList';
import { DraftItems } from './DraftItems';
import { IssuePart } from './IssuePart';
import styles from './PriceLists.module.css';
import { PriceListWording } from './PriceListWording';

type DraftPartProps = Readonly<{
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

/** The next version while it is written: items, words, and the button that freezes them. */
export function DraftPart(props: DraftPartProps) {
  const { id, list, offers, name, workspace } = props;
  return (
    <section className={styles.part} aria-labelledby="next-heading">
      <h2 id="next-heading">Version {name}, a draft</h2>
      <p className={styles.words}>
        It follows your jobs and today’s rates until you issue it. From then on its prices stay as they are,
        whatever moves.
      </p>
      <IssuePart {...props} />
      <DraftItems id={id} list={list} offers={offers} workspace={workspace} />
      <PriceListWording id={id} list={list} workspace={workspace} />
    </section>
  );
}
