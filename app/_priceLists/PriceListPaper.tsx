import { classes } from '@/app/_controls/classes';
import { type Formatter, formatterFor, type TextContext } from '@/app/_words/formatter';
import { paperNumberText } from '@/app/_words/paperNumberText';
import {
  chargesOnPaper,
  type MoneyOf,
  moneyOf,
  pricesOnPaper,
  ruleOnPaper,
  sizesOnPaper,
  taxOnPaper,
} from '@/app/_words/priceLists/paperWords';
import { usableLocale } from '@/app/_words/usableLocale';
import type { PriceListVersion } from '@/shared/schemas/priceList';
import styles from './PriceListPaper.module.css';

type PaperStanding = 'draft' | 'inForce' | 'withdrawn' | 'changed';

type PriceListPaperProps = Readonly<{
  version: PriceListVersion;
  /** What is no paper in force says so on its face. */
  standing: PaperStanding;
  context: TextContext;
}>;

/** What the customer gets: items, prices and terms; no cost, no margin, no note of the maker. */
export function PriceListPaper({ version, standing, context }: PriceListPaperProps) {
  const formatter = formatterFor(context);
  const money = moneyOf(version.currency, usableLocale(context.locale));
  const charges = chargesOnPaper(version);
  const number = paperNumberText(version.number);
  const isDraft = standing === 'draft';
  const warning = warningOnPaper[standing];
  return (
    <article
      className={styles.paper}
      aria-label={isDraft ? 'Draft of the price list' : `Price list, version ${number}`}
    >
      <header className={styles.head}>
        <div>
          <h2 className={styles.title}>{version.title}</h2>
          <p className={styles.dates}>
            {isDraft
              ? 'Draft, not issued yet'
              : `Version ${number}, issued ${formatter.day(version.issuedOn)}, valid until ${formatter.day(version.validUntil)}`}
          </p>
          {warning !== null && <p className={styles.warning}>{warning}</p>}
        </div>
        {version.from !== '' && <p className={styles.from}>{version.from}</p>}
      </header>
      <div>
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
      </div>
    </article>
  );
}

// Helpers

const warningOnPaper: Readonly<Record<PaperStanding, string | null>> = {
  draft: null,
  inForce: null,
  withdrawn: 'Withdrawn: it is not in force any more.',
  changed: 'Changed since it was issued: do not rely on it.',
};

type PaperItemProps = Readonly<{
  item: PriceListVersion['items'][number];
  money: MoneyOf;
  formatter: Formatter;
}>;

/** More prices than this stand in a row of their own. */
const BESIDE = 3;

function PaperItem({ item, money, formatter }: PaperItemProps) {
  const { largestPrint, setUp } = item;
  const rule = ruleOnPaper[item.selling];
  const prices = setUp === null ? pricesOnPaper(item, money) : [];
  const isOnePrice = item.selling === 'onePrice';
  return (
    <section className={classes(styles.item, prices.length > BESIDE && styles.wide)}>
      <div className={styles.what}>
        <h3 className={styles.name}>{item.name}</h3>
        <p className={styles.says}>
          {item.says}
          {largestPrint !== null && `, up to ${formatter.size(largestPrint.widthMm, largestPrint.heightMm)}`}
        </p>
        {/* One price a size says them itself. */}
        {!isOnePrice && (
          <p className={styles.says}>
            {item.sizes.length === 1 ? 'Size' : 'Sizes'} {sizesOnPaper(item, money)}
          </p>
        )}
      </div>
      <div>
        {setUp !== null ? (
          <p className={styles.tariff}>
            <strong>{money(setUp.start)}</strong> to start and <strong>{money(setUp.each)}</strong> a piece
          </p>
        ) : (
          <dl
            className={classes(
              prices.length > BESIDE ? styles.row : styles.beside,
              isOnePrice && styles.onePrice,
            )}
          >
            {prices.map(({ of, pays, how, atMost }) => (
              <div className={styles.price} key={of}>
                <dt className={styles.of}>{of}</dt>
                <dd className={styles.pays}>
                  <strong className={styles.amount}>{pays}</strong>{' '}
                  {how !== null && <span className={styles.how}>{how}</span>}
                </dd>
                {atMost !== null && (
                  <dd className={styles.atMost}>
                    at most <b>{atMost}</b> together
                  </dd>
                )}
              </div>
            ))}
          </dl>
        )}
        {rule !== null && <p className={styles.rule}>{rule}</p>}
      </div>
    </section>
  );
}
