import { Button } from '@/app/_controls/Button';
import { ButtonLink } from '@/app/_controls/ButtonLink';
import { goToSection } from '@/app/_sections/goToSection';
import { holdCells, isOtherThanAdvised } from '@/app/_stallDay/bring/holdCells';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import { dayWays, planActs } from '@/app/_words/stall/dayWords';
import styles from './PlanBar.module.css';

type PlanBarProps = Readonly<{ on: StallOnScreen; isFixed: boolean; isClosed: boolean }>;

/** On a phone, at the thumb: what to expect, and the next thing to do. */
export function PlanBar({ on, isFixed, isClosed }: PlanBarProps) {
  const { plan, isOld, grid, id } = on;
  if (plan === null || isClosed) return null;
  const cells = grid.flatMap(({ rows }) => rows.flatMap((row) => row.cells));
  const isAdvisedOther = cells.some(isOtherThanAdvised) && plan.nothingFits === null;
  const advised = grid.reduce((sum, range) => sum + range.advised, 0);
  return (
    <aside className={styles.bar} data-plan-bar aria-label="Plan at the thumb">
      <p className={styles.profit} data-old={isOld || undefined}>
        <strong>{on.amount(plan.mine.weighted.profit)}</strong> to expect
      </p>
      {isFixed ? (
        <ButtonLink kind="strong" href={`/stall/${id}/count`}>
          {dayWays.count}
        </ButtonLink>
      ) : isAdvisedOther ? (
        <Button
          kind="strong"
          spoken={planActs.takeAll(advised)}
          onPress={() => holdCells(on, 'Take the advice', cells, (cell) => cell.advised)}
        >
          {planActs.take}
        </Button>
      ) : (
        <Button kind="strong" onPress={() => goToSection('car')}>
          {planActs.fix}
        </Button>
      )}
    </aside>
  );
}
