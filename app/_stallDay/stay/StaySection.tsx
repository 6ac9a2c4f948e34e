import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { LaterPart } from '@/app/_network/LaterPart';
import { laterParts } from '@/app/_stallDay/laterParts';
import type { StallOnScreen, StallPlan } from '@/app/_stallDay/stallOnScreen';
import { outcomeKey } from '@/app/_stallDay/weather/bandsOf';
import { stayAnswer, stayBoundWords } from '@/app/_words/stall/stallPlanWords';
import { certainly, weatherTold } from '@/app/_words/stall/weatherWords';
import styles from './Stay.module.css';

/** Whether to go: what the worst weather still brings beside what staying at home would save. */
export function StaySection({ on, numeral }: Readonly<{ on: StallOnScreen; numeral: number }>) {
  const { plan, id } = on;
  const line = plan === null ? null : stayAnswer(plan.mine.goOrStay, on.stallDay, on.reader);
  return (
    <CardSection
      numeral={numeral}
      id="go-or-stay"
      heading="Go or stay home"
      answer={
        line && (
          <>
            <strong>{line.key}</strong>
            {line.after}
          </>
        )
      }
    >
      {plan !== null && <Bars plan={plan} on={on} />}
      <FoldRow
        place={id}
        folds={[
          {
            id: 'stall-fold-saved',
            name: 'What staying would save',
            body: () => <LaterPart part={laterParts.saved} what="What is saved" props={{ on }} />,
          },
        ]}
      />
    </CardSection>
  );
}

// Helpers

function Bars({ plan, on }: Readonly<{ plan: StallPlan; on: StallOnScreen }>) {
  const { goOrStay, outcomes } = plan.mine;
  const { worst, avoidable } = goOrStay;
  const most = Math.max(worst.earns, avoidable, 1);
  const factor = outcomes.find((one) => outcomeKey(one) === outcomeKey(worst))?.factor ?? null;
  const bars = [
    { name: 'going brings', value: worst.earns, look: styles.go },
    { name: 'staying saves', value: avoidable, look: styles.stay },
  ];
  return (
    <div className={styles.columns}>
      <div>
        <p className={styles.title}>{certainly(weatherTold(worst, on.stallDay))}, still open to you</p>
        <ul className={styles.bars}>
          {bars.map(({ name, value, look }) => (
            <li key={name} className={styles.bar}>
              <span className={styles.name}>{name}</span>
              <span className={styles.room}>
                <span
                  className={look}
                  style={{ inlineSize: `${((100 * Math.max(0, value)) / most).toFixed(2)}%` }}
                />
              </span>
              <strong>{on.amount(value)}</strong>
            </li>
          ))}
        </ul>
      </div>
      <p className={styles.bound}>{stayBoundWords(goOrStay, factor, on.stallDay, on.reader)}</p>
    </div>
  );
}
