import { Fold } from '@/app/_controls/Fold';
import styles from '@/app/_orderPapers/OrderPapers.module.css';
import { findingWords } from '@/app/_words/findings/findingWords';
import type { Formatter, TextContext } from '@/app/_words/formatter';
import { minorMoney } from '@/app/_words/orders/minorWords';
import type { QuoteDraft } from '@/lib/quotes/makeQuote';

type OwnersSideProps = Readonly<{
  draft: QuoteDraft;
  formatter: Formatter;
  locale: string;
  context: TextContext;
}>;

/** What the quote leaves its maker. It is kept with the paper and stands on no file. */
export function OwnersSide({ draft, formatter, locale, context }: OwnersSideProps) {
  const { owner, currency, alternatives } = draft.body;
  // What an alternative leaves is not kept with the paper.
  const isMaybeUnder = owner.profit < 0 || alternatives.length > 0;
  const money = (minor: number) => minorMoney(minor, currency, locale);
  const facts = [
    { name: 'Full cost', value: money(owner.fullCost) },
    { name: 'Pays the bills from', value: money(owner.floor) },
    { name: 'Left after everything', value: money(owner.profit) },
    { name: 'Margin', value: formatter.share(owner.margin) },
    {
      name: 'Pay an hour',
      value: owner.payPerHour === null ? 'no minutes are known' : money(owner.payPerHour),
    },
  ];
  return (
    <Fold
      summary="For you alone, never printed"
      line={`${formatter.share(owner.margin)} margin, ${money(owner.profit)} left`}
    >
      <dl className={styles.facts}>
        {facts.map(({ name, value }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      {owner.underCostWhy !== '' && isMaybeUnder && <p>Offered under cost: {owner.underCostWhy}</p>}
      {draft.risks.length > 0 && (
        <>
          <h3 className={styles.sub}>What may go wrong</h3>
          <ul>
            {draft.risks.map((risk) => {
              const { sentence, detail } = findingWords(risk, context);
              return (
                <li key={`${risk.id} ${sentence}`}>
                  {sentence} {detail}
                </li>
              );
            })}
          </ul>
        </>
      )}
    </Fold>
  );
}
