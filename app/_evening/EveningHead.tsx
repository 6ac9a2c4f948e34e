import { Advice } from '@/app/_controls/Advice';
import { ButtonLink } from '@/app/_controls/ButtonLink';
import { classes } from '@/app/_controls/classes';
import { PageHead } from '@/app/_controls/PageHead';
import { usePageName } from '@/app/_controls/usePageName';
import {
  earlierPlanWords,
  earnsWords,
  eveningOfSeveralWords,
  openWords,
  soldLine,
  takenWords,
  toDayWords,
} from '@/app/_words/stall/evening/eveningWords';
import { slipNames, slipOrder } from '@/app/_words/stall/evening/slipNames';
import styles from './Evening.module.css';
import type { EveningOnScreen } from './eveningOnScreen';

/** What was taken and what is left of it, what is to be settled, and the way to each slip. */
export function EveningHead({ on }: Readonly<{ on: EveningOnScreen }>) {
  const { evening, locale, formatter, close, today } = on;
  const { plan, money, unsettled } = evening;
  usePageName(`${plan.title}, the evening · Pressminute`);
  const taken = takenWords(evening, locale);
  const open = new Set(unsettled.map(({ slip }) => slip as string));
  return (
    <>
      <PageHead
        title={`${plan.title}, the evening`}
        line={soldLine(evening, close !== null, today, locale)}
        aside={
          on.workspace.stallDays[plan.stallDayId] !== undefined && (
            <ButtonLink href={`/stall/${plan.stallDayId}`}>{toDayWords}</ButtonLink>
          )
        }
      />
      <div className={styles.plate}>
        <p className={styles.taken}>
          <strong>{taken.key}</strong>
          <span>{taken.after}</span>
        </p>
        <p className={styles.earns}>{earnsWords(evening, formatter)}</p>
        <p className={styles.toSettle}>{openWords(evening, locale)}</p>
        {money.isReckoned && (
          <p className={styles.quiet}>Reckoned from goods and prices: tin or reader are not known.</p>
        )}
      </div>
      {on.isOfSeveral && <Advice severity="caution">{eveningOfSeveralWords}</Advice>}
      {on.tapsBefore > 0 && <Advice severity="note">{earlierPlanWords(on.tapsBefore)}</Advice>}
      <nav aria-label="Slips">
        <ul className={styles.strip}>
          {slipOrder.map((slip) => (
            <li key={slip}>
              <a className={classes(styles.chip, open.has(slip) && styles.open)} href={`#evening-${slip}`}>
                {slipNames[slip].chip}
                {open.has(slip) && <span className="visuallyHidden">, to settle</span>}
              </a>
            </li>
          ))}
        </ul>
      </nav>
    </>
  );
}
