'use client';

import { useRef } from 'react';
import { Button } from '@/app/_controls/Button';
import { classes } from '@/app/_controls/classes';
import { takeLabel, takeRowWords } from '@/app/_words/stall/bringWords';
import { inSentence } from '@/app/_words/stall/stallPlanWords';
import { designKey } from '@/lib/stall/designKey';
import { goodsKey } from '@/lib/stall/goodsKey';
import type { BringCell, BringRange, BringRow } from '@/lib/stall/plan/bringGrid';
import type { StallGoods } from '@/shared/schemas/stallDay';
import styles from './Bring.module.css';
import { HeldField } from './HeldField';

interface BringActions {
  readonly hold: (goods: StallGoods, name: string, to: number | null) => void;
  /** Brings the advice of these goods. */
  readonly take: (label: string, cells: readonly BringCell[]) => void;
}

/** What was noted at the last fair to bring, pieces, by goods. */
type NotedBring = ReadonlyMap<string, number>;

type BringRangePartProps = Readonly<{ range: BringRange; noted: NotedBring; actions: BringActions }>;

/** Sizes that stand in one row under one head on a wide screen; more wrap, each under its own name. */
const MOST_IN_A_ROW = 8;

/** What is brought of a range: a row a design, or one row of designs where there are no sizes. */
export function BringRangePart({ range, noted, actions }: BringRangePartProps) {
  const { sizes } = range;
  if (sizes.length === 0) return <UnsizedRange {...{ range, noted, actions }} />;
  const isHeaded = sizes.length <= MOST_IN_A_ROW;
  return (
    <div className={styles.range}>
      {isHeaded && (
        <div className={classes(styles.row, styles.head)} aria-hidden="true">
          <span />
          <div className={styles.cells} data-sizes={sizes.length}>
            {sizes.map((size) => (
              <span key={size}>{size}</span>
            ))}
          </div>
          <span className={styles.sum} />
        </div>
      )}
      {range.rows.map((row) => (
        <DesignRow key={designKey(row)} {...{ row, noted, actions }} sizes={isHeaded ? sizes.length : null} />
      ))}
      <div className={classes(styles.row, styles.all)}>
        <p className={styles.design}>All {inSentence(range.name)}</p>
        <ul className={styles.cells} data-sizes={isHeaded ? sizes.length : undefined}>
          {range.bySize.map(({ size, mine, advised }) => (
            <li key={size} className={styles.sizeSum}>
              <span className={classes(styles.sumSize, isHeaded && styles.onPhone)}>{size}</span>{' '}
              <strong>{mine}</strong> <span className={styles.quiet}>{advised}</span>
            </li>
          ))}
        </ul>
        <p className={styles.total}>
          <strong>{range.mine}</strong> yours, <strong>{range.advised}</strong> advised
        </p>
      </div>
    </div>
  );
}

// Helpers

type DesignRowProps = Readonly<{
  row: BringRow;
  /** How many sizes stand under one head; null where each bears its own name. */
  sizes: number | null;
  noted: NotedBring;
  actions: BringActions;
}>;

function DesignRow({ row, sizes, noted, actions }: DesignRowProps) {
  const { design, cells } = row;
  return (
    <fieldset className={styles.set}>
      <legend className="visuallyHidden">{design}</legend>
      <div className={styles.row}>
        <p className={styles.design}>
          <bdi>{design}</bdi>
        </p>
        <div className={styles.cells} data-sizes={sizes ?? undefined}>
          {cells.map((cell) => (
            <HeldField
              key={cell.size}
              label={cell.size}
              isNamed={sizes === null}
              held={cell.held}
              advised={cell.advised}
              noted={noted.get(goodsKey(cell)) ?? null}
              {...goodsOf(cell)}
              name={`${design} in ${cell.size}`}
              onHold={actions.hold}
            />
          ))}
        </div>
        <TakeSum mine={row.mine} advised={row.advised} what={design} {...{ cells, actions }} />
      </div>
    </fieldset>
  );
}

function UnsizedRange({ range, noted, actions }: BringRangePartProps) {
  const cells = range.rows.flatMap((row) => row.cells.map((cell) => ({ cell, design: row.design })));
  return (
    <fieldset className={classes(styles.set, styles.range)}>
      <legend className="visuallyHidden">{range.name}</legend>
      <div className={styles.row}>
        <p className={styles.design}>
          <bdi>{range.name}</bdi>
        </p>
        <div className={styles.cells}>
          {cells.map(({ cell, design }) => (
            <HeldField
              key={goodsKey(cell)}
              label={design}
              isNamed
              held={cell.held}
              advised={cell.advised}
              noted={noted.get(goodsKey(cell)) ?? null}
              {...goodsOf(cell)}
              name={design}
              onHold={actions.hold}
            />
          ))}
        </div>
        <TakeSum
          mine={range.mine}
          advised={range.advised}
          what={range.name}
          cells={cells.map(({ cell }) => cell)}
          actions={actions}
        />
      </div>
    </fieldset>
  );
}

const goodsOf = ({ jobId, lineId, size }: BringCell): StallGoods => ({ jobId, lineId, size });

type TakeSumProps = Readonly<{
  mine: number;
  advised: number;
  what: string;
  cells: readonly BringCell[];
  actions: BringActions;
}>;

/** The sum of a row, and the button that brings its advice; what it did stays in its place. */
function TakeSum({ mine, advised, what, cells, actions }: TakeSumProps) {
  const sum = useRef<HTMLParagraphElement>(null);
  const differs = cells.some(({ held, advised: better }) => held !== null && held !== better);
  return (
    <div className={styles.sum}>
      <p className={styles.mine} ref={sum} tabIndex={-1}>
        <span className="visuallyHidden">{what}, in all </span>
        {mine}
      </p>
      {differs ? (
        <Button
          spoken={takeRowWords(advised, what)}
          onPress={() => {
            // The button goes with what it offers; the sum stays.
            sum.current?.focus();
            actions.take(takeLabel(what), cells);
          }}
        >
          take {advised}
        </Button>
      ) : (
        <span className={styles.agreed}>as advised</span>
      )}
    </div>
  );
}
