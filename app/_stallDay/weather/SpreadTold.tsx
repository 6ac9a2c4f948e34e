import type { StallOnScreen, StallPlan } from '@/app/_stallDay/stallOnScreen';
import { spreadWords } from '@/app/_words/stall/spreadWords';
import styles from './Weather.module.css';

/** How far days differ from each other, weather and buyers together. */
export const SpreadTold = ({ on, plan }: Readonly<{ on: StallOnScreen; plan: StallPlan }>) => (
  <>
    {spreadWords(plan.mine.spread, plan.mine.pieces, on.reader).map((sentence) => (
      <p key={sentence} className={styles.facts}>
        {sentence}
      </p>
    ))}
  </>
);
