import { classes } from '@/app/_controls/classes';
import { type Formatter, formatterFor, type TextContext } from '@/app/_words/formatter';
import {
  chargesOnPaper,
  type MoneyOf,
  moneyOf,
  rowsOnPaper,
  ruleOnPaper,
  sizesOnPaper,
  taxOnPaper,
} from '@/app/_words/priceLists/paperWords';
import { usableLocale } from '@/app/_words/usableLocale';
import type { PriceListVersion } from '@/shared/schemas/priceList';
import styles from './PriceListPaper.module.css';

type PriceListPaperProps = Readonly<{
  version: PriceListVersion;
  /** True for what nobody has issued yet; it says so on the paper too. */
  isDraft: boolean;
  /** Names the page it is printed on; null while another part of the screen is printed. */
  size: 'paperA4' | 'paperLetter' | null;
  context: TextContext;
}>;

/** What the customer gets: items, prices and terms; no cost, no margin, no note of the maker. */
export function PriceListPaper({ version, isDraft, size, context }: PriceListPaperProps) {
  const formatter = formatterFor(context);
  const money = moneyOf(version.currency, usableLocale(context.locale));
  const charges = chargesOnPaper(version);
  return (
    <article
      className={classes(styles.paper, size)}
      aria-label={isDraft ? 'Draft of the price list' : `Price list, version ${version.number}`}
    >
      <header className={styles.head}>
        <div>
          <h2 className={styles.title}>{version.title}</h2>
          <p className={styles.dates}>
            {isDraft
              ? 'Draft, not issued yet'
              : `Version ${version.number}, issued ${formatter.day(version.issuedOn)}, valid until ${formatter.day(version.validUntil)}`}
          </p>
        </div>
        {version.from !== '' && <p className={styles.from}>{version.from}</p>}
      </header>
      {version.notes !== '' && <p className={styles.notes}>{version.notes}</p>}
      {version.items.map((item) => (
        <PaperItem key={item.id} item={item} money={money} formatter={formatter} />
      ))}
      {charges.length > 0 && (
        <section className={styles.charges}>
          <h3 className={styles.small}>Beside the pieces</h3>
          <dl className={styles.amounts}>
            {charges.map(({ key, label, amount }) => (
              <div key={key}>
                <dt>{label}</dt>
                <dd>{money(amount)}</dd>
              </div>
            ))}
          </dl>
        </section>
      )}
      <footer className={styles.terms}>
        <p>
          Prices are in {version.currency}; {taxOnPaper[version.taxMode]}.
          {version.leadTime !== '' && ` ${version.leadTime}`}
        </p>
      </footer>
    </article>
  );
}

// Helpers

type PaperItemProps = Readonly<{
  item: PriceListVersion['items'][number];
  money: MoneyOf;
  formatter: Formatter;
}>;

function PaperItem({ item, money, formatter }: PaperItemProps) {
  const { largestPrint, setUp } = item;
  const rule = ruleOnPaper[item.selling];
  return (
    <section className={styles.item}>
      <div className={styles.what}>
        <h3 className={styles.name}>{item.name}</h3>
        <p className={styles.says}>
          {item.says}
          {largestPrint !== null && `, up to ${formatter.size(largestPrint.widthMm, largestPrint.heightMm)}`}
        </p>
        <p className={styles.says}>
          {item.sizes.length === 1 ? 'Size' : 'Sizes'} {sizesOnPaper(item, money)}
        </p>
      </div>
      <div className={styles.prices}>
        {setUp !== null ? (
          <p className={styles.tariff}>
            <strong>{money(setUp.start)}</strong> to start and <strong>{money(setUp.each)}</strong> a piece
          </p>
        ) : (
          <dl className={styles.breaks}>
            {rowsOnPaper(item, money).map(({ pieces, pays }) => (
              <div key={pieces}>
                <dt>{pieces}</dt>
                <dd>{pays}</dd>
              </div>
            ))}
          </dl>
        )}
        {rule !== null && <p className={styles.rule}>{rule}</p>}
      </div>
    </section>
  );
}
