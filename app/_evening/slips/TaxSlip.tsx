import { CardSection } from '@/app/_controls/CardSection';
import { Answer } from '@/app/_docket/common/Answer';
import type { EveningOnScreen } from '@/app/_evening/eveningOnScreen';
import { taxAnswer, taxRule } from '@/app/_words/stall/evening/moneyWords';
import { slipNames } from '@/app/_words/stall/evening/slipNames';
import styles from './Slips.module.css';

/** What of the takings is tax, and how it was reckoned. */
export function TaxSlip({ on: { evening, locale, formatter } }: Readonly<{ on: EveningOnScreen }>) {
  return (
    <CardSection
      numeral={4}
      id="evening-tax"
      heading={slipNames.tax.heading}
      answer={<Answer words={taxAnswer(evening, locale)} />}
    >
      {evening.plan.taxMode !== 'none' && (
        <p className={styles.quiet}>{taxRule(evening, locale, formatter)}</p>
      )}
    </CardSection>
  );
}
