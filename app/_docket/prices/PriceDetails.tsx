'use client';

import { Button } from '@/app/_controls/Button';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { breakPiecesWords } from '@/app/_words/docket/breakPiecesWords';
import { breakWords } from '@/app/_words/docket/breakWords';
import { listAssumesWords } from '@/app/_words/docket/pricesWords';
import { sizesWords } from '@/app/_words/docket/sizesWords';
import { formatterFor } from '@/app/_words/formatter';
import type { LineList } from '@/lib/price/list/lineList';
import type { TablePrice } from '@/lib/price/priceTable';
import { fromMinor } from '@/shared/money';
import type { Job } from '@/shared/schemas/job';
import type { Channel } from '@/shared/schemas/workshop';
import { askTablePrices } from './askTablePrices';
import styles from './PriceDetails.module.css';
import type { PriceGroup } from './priceGrid';

type PriceDetailsProps = Readonly<{
  line: Job['lines'][number];
  rule: LineList['rule'];
  cell: TablePrice;
  group: PriceGroup;
  table: readonly TablePrice[];
  priceStep: number;
  taxMode: Channel['taxMode'];
  currency: string;
  /** Whether the job has other lines. */
  isOneOfSeveral: boolean;
  /** The margin aimed for. */
  target: number;
}>;

/** What the picked price stands on, and the way to ask the prices of its break in this job. */
export function PriceDetails(props: PriceDetailsProps) {
  const { line, cell, group, table, priceStep, taxMode, currency, rule, isOneOfSeveral, target } = props;
  const { jobId, workspace, prices } = useJob();
  const formatter = formatterFor(useTextContext());
  const price = formatter.money(fromMinor(cell.price, currency));
  const isInside = taxMode === 'inside';
  const standing = () => {
    if (cell.isOwn)
      return `${isInside ? ' without tax' : ''}. The suggestion is ${formatter.money(fromMinor(cell.suggested, currency))}; the price is your own.`;
    return line.upCharging === 'averaged'
      ? `${isInside ? ' without tax' : ''}. One price covers all sizes, averaged over the sizes really ordered.`
      : `${isInside ? ' without tax, with it' : ','} lifted to the next ${formatter.money(priceStep)}.`;
  };
  return (
    <div className={styles.details}>
      <p>
        <strong>
          {sizesWords(group.sizes)}, {breakPiecesWords(cell)}: {price}.
        </strong>{' '}
        A piece costs {formatter.money(cell.fullCost)} in full; {formatter.share(target)} after fees and your
        own pay asks for {formatter.money(cell.target)}
        {standing()} At {price} the margin is {formatter.share(cell.margin)}, the markup{' '}
        {formatter.share(cell.markup)}, and it pays you {formatter.money(cell.payPerHour)} an hour.
        {cell.pricedAt !== cell.from &&
          ` The least it leaves is at ${formatter.count(cell.pricedAt, 'piece')}: there one more sheet or session is begun, and inside this break no quantity needs a higher price.`}
      </p>
      <p className={styles.assumes}>{listAssumesWords(rule, isOneOfSeveral, target, formatter)}</p>
      {/* Of a list with a start no price of a piece is what a job pays; what it comes to is asked beside the list. */}
      {!prices.stale && rule !== 'setUpApart' && (
        <Button
          onPress={() =>
            workspace.changeJob(jobId, `Asked price of ${line.name}`, (job) =>
              askTablePrices(job, table, cell, currency),
            )
          }
        >
          Ask the prices of {breakWords(cell)} in this job
        </Button>
      )}
    </div>
  );
}
