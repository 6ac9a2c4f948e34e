import { Button } from '@/app/_controls/Button';
import { goToSection } from '@/app/_sections/goToSection';
import { planActs } from '@/app/_words/stall/dayWords';
import styles from './PlanActs.module.css';

type PlanActsProps = Readonly<{ isFixed: boolean; show: (fieldId: string) => void }>;

/** What is done with a plan, at the foot of the rail: fixed, and printed as lists. */
export const PlanActs = ({ isFixed, show }: PlanActsProps) => (
  <div className={styles.acts}>
    <Button kind={isFixed ? 'plain' : 'strong'} onPress={() => goToSection('car')}>
      {isFixed ? planActs.fixed : planActs.fix}
    </Button>
    <Button onPress={() => show('stall-prices-papers')}>{planActs.table}</Button>
    <Button onPress={() => show('stall-car-paper')}>{planActs.load}</Button>
  </div>
);
