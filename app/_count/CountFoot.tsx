'use client';

import { classes } from '@/app/_controls/classes';
import { payWords, ticketWords } from '@/app/_words/stall/count/countWords';
import { tapWords } from '@/app/_words/stall/count/tapWords';
import { stallPayWays } from '@/shared/schemas/stallEvents';
import styles from './Foot.module.css';
import { SetKeys } from './SetKeys';
import { SoldEvenSo } from './SoldEvenSo';
import type { ThumbSide } from './thumbSide';
import type { TileRow } from './tileRows';
import type { Counting } from './useCount';

/** What can be opened over the count. */
export type CountPanel = 'asked' | 'more';

type CountFootProps = Readonly<{
  counting: Counting;
  rows: readonly TileRow[];
  side: ThumbSide;
  onOpen: (panel: CountPanel) => void;
}>;

/** What the thumb reaches: how this customer pays, the way back, and the next customer. */
export function CountFoot({ counting, rows, side, onOpen }: CountFootProps) {
  const { named, ticket, count, locale } = counting;
  const asked =
    count.goods.reduce((sum, one) => sum + one.asked, 0) +
    count.askedFor.reduce((sum, one) => sum + one.count, 0);
  return (
    <div className={classes(styles.foot, side === 'left' && styles.mirrored)}>
      {ticket.sets.length > 0 && (
        <div className={styles.row}>
          <SetKeys counting={counting} className={styles.key} smallClass={styles.small} />
        </div>
      )}
      <div className={classes(styles.row, styles.beside)}>
        <button type="button" className={classes(styles.key, styles.dashed)} onClick={() => onOpen('asked')}>
          Asked for, not here {asked > 0 && <span className={styles.small}>so far {asked}</span>}
        </button>
        <SoldEvenSo {...{ counting, rows }} />
        <button type="button" className={classes(styles.key, styles.slim)} onClick={() => onOpen('more')}>
          More
        </button>
      </div>
      <CustomerKeys counting={counting} />
      <p className="visuallyHidden" aria-live="polite">
        {ticket.last === null ? '' : tapWords(ticket.last.body.tap, named, locale)}
      </p>
    </div>
  );
}

// Helpers

/** One line under the thumb: how it is paid, the last tap back, and the next customer. */
function CustomerKeys({ counting }: Readonly<{ counting: Counting }>) {
  const { plan, named, ticket, locale, tap, undo } = counting;
  return (
    <div className={styles.row}>
      <fieldset className={styles.pays}>
        <legend className="visuallyHidden">How it is paid</legend>
        {stallPayWays.map((pay) => (
          <button
            key={pay}
            type="button"
            className={classes(styles.key, styles.pay)}
            aria-pressed={ticket.pay === pay}
            onClick={() => ticket.pay !== pay && tap({ what: 'pay', pay })}
          >
            {payWords[pay]}
          </button>
        ))}
      </fieldset>
      <button
        type="button"
        className={classes(styles.key, styles.undo)}
        aria-disabled={ticket.last === null || undefined}
        onClick={undo}
      >
        Undo
        <span className={classes(styles.small, styles.clipped)}>
          {ticket.last === null ? 'nothing yet' : tapWords(ticket.last.body.tap, named, locale)}
        </span>
      </button>
      <button
        type="button"
        className={classes(styles.key, styles.next)}
        aria-disabled={!ticket.isBegun || undefined}
        onClick={() => ticket.isBegun && tap({ what: 'next' })}
      >
        Next customer
        <span className={styles.small}>
          {ticket.isBegun ? ticketWords(ticket, plan, locale) : 'nothing yet'}
        </span>
      </button>
    </div>
  );
}
