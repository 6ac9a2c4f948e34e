import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { LaterPart } from '@/app/_network/LaterPart';
import { laterParts } from '@/app/_stallDay/laterParts';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import { weatherAnswer } from '@/app/_words/stall/stallPlanWords';
import { sayFewer } from '@/lib/stall/plan/advice/sayFewer';
import { OutcomeTable } from './OutcomeTable';
import styles from './Weather.module.css';
import { WeatherBands } from './WeatherBands';

/** What each weather makes of the plan, and of the advice. */
export function WeatherSection({ on, numeral }: Readonly<{ on: StallOnScreen; numeral: number }>) {
  const { plan, id } = on;
  const line =
    plan === null ? null : weatherAnswer(plan.mine, sayFewer(plan.mine, plan.advice), on.stallDay, on.reader);
  const { p10, p50, p90 } = plan?.mine.spread ?? { p10: 0, p50: 0, p90: 0 };
  return (
    <CardSection
      numeral={numeral}
      id="weather"
      heading="What the weather does"
      answer={
        line && (
          <>
            <strong>{line.key}</strong>
            {line.after}
          </>
        )
      }
    >
      {plan !== null && (
        <div className={styles.columns}>
          <WeatherBands
            plan={plan}
            stallDay={on.stallDay}
            number={on.formatter.number}
            share={on.formatter.share}
          />
          <OutcomeTable {...{ plan, on }} />
        </div>
      )}
      <FoldRow
        place={id}
        folds={[
          {
            id: 'stall-fold-chances',
            name: 'Chances of the weather',
            holds: ['stall-weathers', 'stall-isOutdoor'],
            body: () => <LaterPart part={laterParts.chances} what="The weathers" props={{ on }} />,
          },
          ...(plan === null
            ? []
            : [
                {
                  id: 'stall-fold-spread',
                  name: `Spread: ${[p10, p50, p90].map((one) => on.formatter.number(one, 0)).join(', ')}`,
                  body: () => <LaterPart part={laterParts.spread} what="The spread" props={{ on, plan }} />,
                },
                {
                  id: 'stall-fold-sold',
                  name: 'Sold, fees and leftovers',
                  body: () => <LaterPart part={laterParts.sold} what="The figures" props={{ on, plan }} />,
                },
              ]),
        ]}
      />
    </CardSection>
  );
}
