import { classes } from '@/app/_controls/classes';
import type { Block } from '@/lib/papers/paper';
import sheet from './PaperSheet.module.css';
import styles from './SheetPrices.module.css';

type Of<Kind extends Block['kind']> = Extract<Block, { readonly kind: Kind }>;

/** Prices to be read from afar. */
export function SheetPrices({ block }: Readonly<{ block: Of<'prices'> }>) {
  return (
    <div className={sheet.block}>
      <p className={styles.name}>
        <bdi>{block.name}</bdi>
      </p>
      {block.tagline !== '' && <p>{block.tagline}</p>}
      <ul className={styles.rows}>
        {block.rows.map(({ what, under, figure, isOffer }) => (
          <li key={`${what} ${under} ${figure}`} className={classes(styles.row, isOffer && styles.offer)}>
            <span className={styles.words}>
              <strong className={styles.what}>{what}</strong> <span>{under}</span>
            </span>
            <strong className={styles.figure}>{figure}</strong>
          </li>
        ))}
      </ul>
      {block.foot
        .filter((text) => text !== '')
        .map((text) => (
          <p key={text}>{text}</p>
        ))}
    </div>
  );
}

/** Cards as they are cut. */
export const SheetPriceCards = ({ block }: Readonly<{ block: Of<'priceCards'> }>) => (
  <ul className={classes(sheet.block, styles.cards)}>
    {block.cards.map(({ name, figure, lines, foot }) => (
      <li key={`${name} ${figure} ${lines.join(' ')}`} className={styles.card}>
        <span className={styles.words}>
          <strong>
            <bdi>{name}</bdi>
          </strong>
          {lines.map((line) => (
            <span key={line}>{line}</span>
          ))}
          {foot !== '' && <span>{foot}</span>}
        </span>
        <strong className={styles.figure}>{figure}</strong>
      </li>
    ))}
  </ul>
);
