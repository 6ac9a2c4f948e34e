'use client';

import { classes } from '@/app/_controls/classes';
import { ladderWords, listMoney, type PriceVoice, stepWords } from '@/app/_words/docket/pricesWords';
import { ladderOf } from '@/lib/price/list/ladder';
import type { LineList } from '@/lib/price/list/lineList';
import type { Channel } from '@/shared/schemas/workshop';
import styles from './PriceLadder.module.css';

type PriceLadderProps = Readonly<{
  list: LineList;
  /** Pieces of the line in this job. */
  n: number;
  taxMode: Channel['taxMode'];
  voice: PriceVoice;
}>;

/** The list as a row of prices, and beneath it what larger sizes add. */
export function PriceLadder({ list, n, taxMode, voice }: PriceLadderProps) {
  const steps = ladderOf(list);
  const more = list.sizes.filter((one) => one.more > 0);
  const isOfJob = ({ from, breakTo }: (typeof steps)[number]) =>
    steps.length > 1 && list.rule !== 'setUpApart' && n >= from && (breakTo === null || n <= breakTo);
  return (
    <div className={styles.list}>
      <ol className={styles.ladder} aria-label="Prices by quantity">
        {steps.map((step) => (
          <li
            className={classes(styles.step, isOfJob(step) && styles.ofJob)}
            key={`${step.kind} ${step.from}`}
          >
            <span className={styles.span}>
              {stepWords(step, list.rule)}
              {isOfJob(step) && ', this job'}
            </span>
            <span className={styles.price}>
              {listMoney(step.amount, voice)}
              {step.kind === 'together' && <small className={styles.order}> the order</small>}
            </span>
            {step.alone !== null && step.alone !== step.amount && (
              <span className={styles.alone}>one alone {listMoney(step.alone, voice)}</span>
            )}
          </li>
        ))}
      </ol>
      <p className={styles.more}>
        <span>{ladderWords(list.sizes, taxMode, voice)}</span>
        {more.map(({ size, more: charge }) => (
          <strong key={size}>
            {size} +{listMoney(charge, voice)}
          </strong>
        ))}
      </p>
    </div>
  );
}
