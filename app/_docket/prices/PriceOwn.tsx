'use client';

import Link from 'next/link';
import { Button } from '@/app/_controls/Button';
import { Fold } from '@/app/_controls/Fold';
import { fieldId } from '@/app/_docket/common/fieldId';
import { useJob } from '@/app/_docket/common/useJob';
import { fieldAddress } from '@/app/_documents/fieldAddress';
import { BreakFields } from '@/app/_fields/BreakFields';
import { NumberField } from '@/app/_fields/NumberField';
import { useTextContext } from '@/app/_fields/useTextContext';
import { breakPieceWords } from '@/app/_words/docket/breakWords';
import { formatterFor } from '@/app/_words/formatter';
import type { TablePrice } from '@/lib/price/priceTable';
import { numberLimits } from '@/shared/limits';
import { fromMinor } from '@/shared/money';
import { type Line, lineSchema } from '@/shared/schemas/job';
import { currencyDigits } from '@/shared/tables/currencies';
import styles from './PriceOwn.module.css';

type PriceOwnProps = Readonly<{
  line: Line;
  index: number;
  /** One cell of the first size for each break, newest figures; none while there are none. */
  cells: readonly TablePrice[];
}>;

/** The maker's own price of each break, and the breaks themselves. */
export function PriceOwn({ line, index, cells }: PriceOwnProps) {
  const { jobId, input, workspace, field } = useJob();
  const formatter = formatterFor(useTextContext());
  const { currency, policy } = input.workshop;
  const digits = currencyDigits(currency) ?? 2;
  const path = ['lines', index, 'ownPrices'] as const;
  const breaks = [...new Set(policy.breaks)].sort((a, b) => a - b);
  const idle = line.ownPrices.filter(({ from }) => !breaks.includes(from));
  const setPrice = (from: number, each: number | null) =>
    void workspace.changeJob(
      jobId,
      `Own price from ${formatter.count(from, 'piece')} on`,
      (job) => ({
        ...job,
        lines: job.lines.map((other) => {
          if (other.id !== line.id) return other;
          const others = other.ownPrices.filter((price) => price.from !== from);
          const ownPrices = each === null ? others : [...others, { from, each }];
          return { ...other, ownPrices: ownPrices.sort((a, b) => a.from - b.from) };
        }),
      }),
      `own price of ${line.id} from ${from}`,
    );
  const where = { document: 'workshop', path: ['policy', 'breaks'] } as const;
  return (
    <Fold
      id={fieldId(['lines', index, 'prices'])}
      summary="Your own prices"
      line={
        line.ownPrices.length === 0
          ? 'none; the suggestions stand'
          : `${formatter.count(line.ownPrices.length - idle.length, 'break')} of ${breaks.length}`
      }
      holds={[fieldId(path)]}
    >
      <p className={styles.words}>
        Written as this way of selling writes prices. They stand in the table instead of the suggestion, with
        what they leave you; an empty field takes the suggestion.
      </p>
      <div className={styles.fields}>
        {breaks.map((from, place) => {
          const own = line.ownPrices.findIndex((price) => price.from === from);
          const next = breaks[place + 1];
          const cell = cells.find((one) => one.from === from);
          const suggested = cell === undefined ? '' : formatter.money(fromMinor(cell.suggested, currency));
          return (
            <div className={styles.field} key={from}>
              <NumberField
                {...field(
                  breakPieceWords({ from, to: next === undefined ? null : next - 1 }),
                  [...path, own < 0 ? `new${from}` : own, 'each'],
                  `Own price from ${formatter.count(from, 'piece')} on`,
                )}
                unit={currency}
                width="full"
                value={line.ownPrices[own]?.each ?? null}
                {...numberLimits(lineSchema, ['ownPrices', 0, 'each'])}
                decimals={digits}
                minDecimals={digits}
                hint={suggested === '' ? undefined : `suggested ${suggested}`}
                onCommit={(each) => setPrice(from, each)}
              />
              {own >= 0 && (
                <Button kind="quiet" onPress={() => setPrice(from, null)}>
                  Take the suggestion <span className="visuallyHidden">from {from} pieces</span>
                </Button>
              )}
            </div>
          );
        })}
      </div>
      {idle.map(({ from, each }) => (
        <p className={styles.idle} key={from}>
          Your price of {formatter.money(each)} from {formatter.count(from, 'piece')} rests: no break begins
          there.{' '}
          <Button kind="quiet" onPress={() => setPrice(from, null)}>
            Remove <span className="visuallyHidden">the price from {from} pieces</span>
          </Button>
        </p>
      ))}
      <h3 className={styles.sub}>Quantity breaks</h3>
      <p className={styles.words}>
        They belong to <Link href={fieldAddress(where) ?? '/workshop'}>the prices of your workshop</Link> and
        hold for every job.
      </p>
      <BreakFields
        breaks={policy.breaks}
        onCommit={(starts) =>
          void workspace.setField({ kind: 'workshop' }, 'Quantity breaks', where.path, starts)
        }
      />
    </Fold>
  );
}
