'use client';

import { classes } from '@/app/_controls/classes';
import { payWords, shortAmount } from '@/app/_words/stall/count/countWords';
import { tapWords } from '@/app/_words/stall/count/tapWords';
import { stallPayWays } from '@/shared/schemas/stallEvents';
import styles from './Foot.module.css';
import type { ThumbSide } from './thumbSide';
import type { Counting } from './useCount';

/** What can be opened over the count. */
export type CountPanel = 'asked' | 'more';

type CountFootProps = Readonly<{
  counting: Counting;
  side: ThumbSide;
  onOpen: (panel: CountPanel) => void;
}>;

/** What the thumb reaches: how this customer pays, the way back, and the next customer. */
export function CountFoot({ counting, side, onOpen }: CountFootProps) {
  const { plan, ticket, count, locale, tap, undo } = counting;
  const money = (minor: number) => shortAmount(minor, plan.currency, locale);
  const asked =
    count.goods.reduce((sum, one) => sum + one.asked, 0) +
    count.askedFor.reduce((sum, one) => sum + one.count, 0);
  const [set] = ticket.sets;
  return (
    <div className={classes(styles.foot, side === 'left' && styles.mirrored)}>
      <div className={styles.row}>
        <button type="button" className={classes(styles.key, styles.dashed)} onClick={() => onOpen('asked')}>
          Asked for, not here {asked > 0 && <span className={styles.small}>so far {asked}</span>}
        </button>
        <button type="button" className={classes(styles.key, styles.slim)} onClick={() => onOpen('more')}>
          More
        </button>
      </div>
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
          className={styles.key}
          aria-disabled={ticket.last === null || undefined}
          onClick={undo}
        >
          Undo
          <span className={styles.small}>
            {ticket.last === null ? 'nothing yet' : tapWords(ticket.last.body.tap, plan, locale)}
          </span>
        </button>
      </div>
      <div className={styles.row}>
        {set !== undefined && (
          <button
            type="button"
            className={styles.key}
            onClick={() => tap({ what: 'set', setId: set.setId, minor: set.minor, pay: set.pay })}
          >
            {set.name}
            <span className={styles.small}>{money(-set.minor)}</span>
          </button>
        )}
        <button
          type="button"
          className={classes(styles.key, styles.next)}
          aria-disabled={!ticket.isBegun || undefined}
          onClick={() => ticket.isBegun && tap({ what: 'next' })}
        >
          Next customer
          <span className={styles.small}>
            {ticket.isBegun ? `${ticket.pieces} for ${money(ticket.minor)}` : 'nothing on the ticket'}
          </span>
        </button>
      </div>
      <p className="visuallyHidden" aria-live="polite">
        {ticket.last === null ? '' : tapWords(ticket.last.body.tap, plan, locale)}
      </p>
    </div>
  );
}
