import type { StallOnScreen, StallPlan } from '@/app/_stallDay/stallOnScreen';
import styles from '@/app/_stallDay/weather/Weather.module.css';
import { whyWords } from '@/app/_words/stall/whyWords';

/** Why as many are advised. */
export const WhyAdvised = ({ on, plan }: Readonly<{ on: StallOnScreen; plan: StallPlan }>) => (
  <>
    {whyWords(plan.goods, on.reader).map((sentence) => (
      <p key={sentence} className={styles.facts}>
        {sentence}
      </p>
    ))}
  </>
);
