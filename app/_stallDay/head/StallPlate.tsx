import { HeatFigure } from '@/app/_controls/HeatFigure';
import type { StallOnScreen, StallPlan } from '@/app/_stallDay/stallOnScreen';
import { outcomeKey } from '@/app/_stallDay/weather/bandsOf';
import { payWords } from '@/app/_words/stall/stallHeadWords';
import { likeliestWords, verdictWords } from '@/app/_words/stall/stallPlanWords';
import { weatherLabel } from '@/app/_words/stall/weatherWords';
import { pressStanding } from '@/lib/stall/making/toPress';
import { breakEvenMarks } from './breakEvenMarks';
import { PiecesRuler } from './PiecesRuler';
import styles from './StallPlate.module.css';
import { ToTypical } from './ToTypical';

/** As many weathers as have room above the bar. */
const MOST_WEATHERS = 4;

/** What the plan as it stands comes to: profit, pay, pieces, whether to go. */
export function StallPlate({ on }: Readonly<{ on: StallOnScreen }>) {
  const { plan, isOld, isRefused } = on;
  if (plan === null)
    return (
      <section className={styles.plate} data-dashed aria-label="The plan in short">
        <p className={styles.waits}>{isRefused ? 'No plan yet.' : 'Working out the plan…'}</p>
      </section>
    );
  return (
    <section
      className={styles.plate}
      data-dashed={(isOld && isRefused) || undefined}
      aria-label="The plan in short"
      aria-busy={(isOld && !isRefused) || undefined}
    >
      <Profit plan={plan} on={on} />
      <Pieces plan={plan} on={on} />
      <Verdict plan={plan} on={on} />
      <p className={styles.old} role="status">
        {isOld && isRefused ? 'These are the figures before what is asked below.' : ''}
      </p>
    </section>
  );
}

// Helpers

type PartProps = Readonly<{ plan: StallPlan; on: StallOnScreen }>;

function Profit({ plan: { mine, goods }, on }: PartProps) {
  const { weighted, dayHours, benchHours } = mine;
  const pay = payWords(weighted.payPerHour, dayHours + benchHours, on, pressStanding(goods).isBegun);
  return (
    <div className={styles.profit}>
      <p className={styles.expect}>
        <span className={styles.figure}>
          <HeatFigure text={on.amount(weighted.profit)} face="display" />
        </span>{' '}
        <span className={styles.under}>profit to expect, over the weathers</span>
      </p>
      {pay !== null && (
        <p>
          pays you about <strong className={styles.pay}>{pay.figure}</strong> {pay.after}
        </p>
      )}
    </div>
  );
}

function Pieces({ plan: { mine }, on }: PartProps) {
  const { breakEven, outcomes } = mine;
  const whole = (pieces: number) => on.formatter.number(pieces, 0);
  const drawn = outcomes.toSorted((one, other) => other.chance - one.chance).slice(0, MOST_WEATHERS);
  return (
    <PiecesRuler
      breakEvens={breakEvenMarks(breakEven)}
      weathers={drawn.map((outcome) => ({
        ...{ id: outcomeKey(outcome), label: weatherLabel(outcome, on.stallDay), value: outcome.sold },
      }))}
      note={(shown) => (shown < outcomes.length ? likeliestWords(shown, outcomes.length) : null)}
      format={whole}
    />
  );
}

function Verdict({ plan: { mine, restsOn }, on }: PartProps) {
  return (
    <div className={styles.verdict}>
      <p className={styles.go}>{verdictWords(mine.goOrStay, on.stallDay)}</p>
      <p className={styles.quiet}>
        <strong>{on.amount(mine.cashBefore)}</strong> laid out before the first sale
        {mine.paid > 0 && `, ${on.amount(mine.paid)} of it paid`}
      </p>
      <p className={styles.quiet}>
        <ToTypical {...restsOn} show={on.show} />
      </p>
    </div>
  );
}
