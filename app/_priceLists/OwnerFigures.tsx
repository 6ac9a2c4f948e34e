import { breakWords } from '@/app/_words/docket/breakWords';
import { formatterFor, type TextContext } from '@/app/_words/formatter';
import { paperNumberText } from '@/app/_words/paperNumberText';
import { moneyOf } from '@/app/_words/priceLists/paperWords';
import { usableLocale } from '@/app/_words/usableLocale';
import type { PriceListVersion } from '@/shared/schemas/priceList';
import styles from './PriceLists.module.css';

type OwnerFiguresProps = Readonly<{ version: PriceListVersion; context: TextContext }>;

/** What each price leaves where it leaves least: for the maker's eyes, never on the paper. */
export function OwnerFigures({ version, context }: OwnerFiguresProps) {
  const formatter = formatterFor(context);
  const money = moneyOf(version.currency, usableLocale(context.locale));
  return (
    <section className={styles.part} aria-labelledby="owner-heading">
      <h2 id="owner-heading">For you alone</h2>
      <p className={styles.words}>
        {version.title}, version {paperNumberText(version.number)}: the least margin inside each break, by the
        way its orders are reckoned. None of it is on the paper.
      </p>
      <section
        className={styles.owner}
        aria-label="Least margins"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls is reached by the keyboard too
        tabIndex={0}
      >
        <table>
          <thead>
            <tr>
              <th scope="col">Item</th>
              <th scope="col">Pieces</th>
              <th scope="col">Listed</th>
              <th scope="col">Least margin</th>
              <th scope="col">At</th>
            </tr>
          </thead>
          <tbody>
            {version.items.flatMap(({ id, name, breaks, setUp }) =>
              breaks.map(({ from, to, each, leastAt, leastSize, leastMargin }) => (
                <tr key={`${id} ${from}`}>
                  <th scope="row">{name}</th>
                  <td>{breakWords({ from, to })}</td>
                  <td>
                    {setUp === null ? money(each) : `${money(setUp.start)} + ${money(setUp.each)} each`}
                  </td>
                  <td>{formatter.share(leastMargin)}</td>
                  <td>
                    {formatter.count(leastAt, 'piece')}, {leastSize}
                  </td>
                </tr>
              )),
            )}
          </tbody>
        </table>
      </section>
    </section>
  );
}
