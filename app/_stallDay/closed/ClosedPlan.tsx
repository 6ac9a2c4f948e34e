import type { ReactNode } from 'react';
import { CardSection } from '@/app/_controls/CardSection';
import { outcomeKey } from '@/app/_stallDay/weather/bandsOf';
import styles from '@/app/_stallDay/weather/Weather.module.css';
import { closedNames, closedPlanAnswer } from '@/app/_words/stall/closedWords';
import { weatherLabel } from '@/app/_words/stall/weatherWords';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import type { ClosedTold } from './ClosedPlate';

type ClosedPlanProps = ClosedTold &
  Readonly<{
    today: string;
    numeral: number;
    /** What is folded away beneath it. */
    children: ReactNode;
  }>;

/** What was expected when the plan was fixed, as the paper has it. */
export function ClosedPlan(props: ClosedPlanProps) {
  const { plan, amount, formatter, today, locale, numeral, children } = props;
  const line = plan === null ? null : closedPlanAnswer(plan, amount, today, locale);
  return (
    <CardSection
      numeral={numeral}
      id="closed-plan"
      heading={closedNames.heading}
      answer={
        line && (
          <>
            <strong>{line.key}</strong>
            {line.after}
          </>
        )
      }
    >
      {plan === null ? (
        <p>{closedNames.noPlan}</p>
      ) : (
        <table className={styles.outcomes}>
          <thead>
            <tr>
              <th scope="col">weather</th>
              <th scope="col">sold</th>
              <th scope="col">profit after your pay</th>
              <th scope="col">an hour</th>
            </tr>
          </thead>
          <tbody>
            {plan.outcomes.map((outcome) => (
              <Outcome
                key={outcomeKey(outcome)}
                {...{ outcome, amount }}
                name={weatherLabel(outcome, plan)}
                number={formatter.number}
              />
            ))}
          </tbody>
        </table>
      )}
      {children}
    </CardSection>
  );
}

// Helpers

type OutcomeProps = Readonly<{
  outcome: StallPlan['outcomes'][number];
  name: string;
  amount: (money: number) => string;
  number: ClosedTold['formatter']['number'];
}>;

const Outcome = ({ outcome: { sold, profit, payPerHour }, name, amount, number }: OutcomeProps) => (
  <tr>
    <th scope="row">{name}</th>
    <td>{number(sold, 0)}</td>
    <td>{amount(profit)}</td>
    <td>{payPerHour === null ? '–' : amount(payPerHour)}</td>
  </tr>
);
