'use client';

import { classes } from '@/app/_controls/classes';
import type { Block, Paper } from '@/lib/papers/paper';
import { isRightToLeft } from '@/lib/papers/words/isRightToLeft';
import styles from './PaperSheet.module.css';
import { SheetGoods } from './SheetGoods';
import { SheetPriceCards, SheetPrices } from './SheetPrices';
import { SheetPresses, SheetStep } from './SheetSteps';
import { SheetTable } from './SheetTable';
import type { PictureAddresses } from './usePictureAddresses';

type PaperSheetProps = Readonly<{ paper: Paper; pictures: PictureAddresses }>;

/** What stands on a paper, in the words and the order of its file, set for the screen. */
export function PaperSheet({ paper, pictures }: PaperSheetProps) {
  return (
    <article
      className={styles.sheet}
      lang={paper.language}
      dir={isRightToLeft(paper.language) ? 'rtl' : 'ltr'}
      aria-label={paper.title}
    >
      {paper.blocks.map((block, at) => (
        // A paper is made anew as a whole, and no block keeps a state.
        // biome-ignore lint/suspicious/noArrayIndexKey: as said
        <SheetBlock key={at} {...{ block, pictures }} />
      ))}
    </article>
  );
}

// Helpers

function SheetBlock({ block, pictures }: Readonly<{ block: Block; pictures: PictureAddresses }>) {
  switch (block.kind) {
    case 'head':
      return <SheetHead {...{ block, pictures }} />;
    case 'title':
      return <SheetTitle block={block} />;
    case 'goods':
      return <SheetGoods {...{ block, pictures }} />;
    case 'table':
      return <SheetTable block={block} />;
    case 'choices':
      return (
        <div className={styles.block}>
          <p className={styles.strong}>{block.heading}</p>
          <ul className={styles.choices}>
            {block.boxes.map(({ label, figure, lines, isAsked }) => (
              <li key={label} className={classes(styles.choice, isAsked && styles.asked)}>
                <bdi className={styles.strong}>{label}</bdi>
                <span className={styles.choiceFigure}>{figure}</span>
                {lines.map((line) => (
                  <span key={line}>{line}</span>
                ))}
              </li>
            ))}
          </ul>
        </div>
      );
    case 'notes':
      return (
        <div className={classes(styles.notes, block.isBoxed && styles.boxed)}>
          {block.notes.map(({ lead, text }) => (
            <p key={`${lead} ${text}`}>
              <strong>{lead}</strong> <span className={styles.lines}>{text}</span>
            </p>
          ))}
        </div>
      );
    case 'text':
      return (
        <p className={classes(styles.block, styles.lines, block.isStrong && styles.strong)}>{block.text}</p>
      );
    case 'amount':
      return (
        <p className={classes(styles.block, styles.amount)}>
          <span>{block.words}</span>
          <span className={styles.total}>{block.figure}</span>
          <span>{block.under}</span>
        </p>
      );
    case 'step':
      return <SheetStep block={block} />;
    case 'presses':
      return <SheetPresses {...{ block, pictures }} />;
    case 'ticks':
      return (
        <ul className={classes(styles.block, styles.ticks)}>
          {block.answers.map(({ text }) => (
            <li key={text}>
              <span className={styles.tick} aria-hidden="true" /> {text}
            </li>
          ))}
        </ul>
      );
    case 'rule':
      return <p className={classes(styles.block, styles.rule)}>{block.words}</p>;
    case 'sign':
      return (
        <ul className={styles.sign}>
          {block.labels.map((label) => (
            <li key={label}>{label}</li>
          ))}
        </ul>
      );
    case 'cards':
      return <SheetCards block={block} />;
    case 'prices':
      return <SheetPrices block={block} />;
    case 'priceCards':
      return <SheetPriceCards block={block} />;
    case 'list':
      return (
        <div className={styles.block}>
          <p className={styles.strong}>{block.heading}</p>
          <ul className={styles.list}>
            {block.items.map((item, at) => (
              // Two people may bear one name.
              // biome-ignore lint/suspicious/noArrayIndexKey: as said
              <li key={at}>
                <bdi>{item}</bdi>
              </li>
            ))}
          </ul>
        </div>
      );
    default:
      return block satisfies never;
  }
}

type Of<Kind extends Block['kind']> = Extract<Block, { readonly kind: Kind }>;

function SheetHead({ block, pictures }: Readonly<{ block: Of<'head'>; pictures: PictureAddresses }>) {
  const logo = block.logo === null ? undefined : pictures.get(block.logo);
  return (
    <div className={styles.head}>
      <div className={styles.from}>
        {/* biome-ignore lint/performance/noImgElement: a file of this device, which no server can make smaller */}
        {logo !== undefined && <img className={styles.logo} src={logo} alt="" />}
        <p className={styles.seller}>
          <bdi>{block.name}</bdi>
        </p>
        {block.tagline !== '' && <p>{block.tagline}</p>}
      </div>
      <div className={styles.ends}>
        {block.lines.map((line) => (
          <p key={line}>
            <bdi>{line}</bdi>
          </p>
        ))}
      </div>
    </div>
  );
}

function SheetTitle({ block }: Readonly<{ block: Of<'title'> }>) {
  const { title, subject, party, facts } = block;
  return (
    <div className={styles.title}>
      <div className={styles.from}>
        <p className={styles.name}>{title}</p>
        {party !== null && (
          <>
            <p>
              {party.words}{' '}
              <strong>
                <bdi>{party.name}</bdi>
              </strong>
            </p>
            {party.lines.map((line) => (
              <p key={line}>
                <bdi>{line}</bdi>
              </p>
            ))}
          </>
        )}
        {subject !== '' && (
          <p>
            <bdi>{subject}</bdi>
          </p>
        )}
      </div>
      <dl className={styles.facts}>
        {facts.map(({ name, value }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </div>
  );
}

/** Cards that are alike are shown once. */
function SheetCards({ block }: Readonly<{ block: Of<'cards'> }>) {
  const kinds = new Map(block.cards.map((card) => [card.heading, card]));
  return (
    <ul className={styles.cards}>
      {[...kinds.values()].map(({ heading, lines, foot }) => (
        <li key={heading}>
          <p className={styles.strong}>
            {block.cards.filter((card) => card.heading === heading).length} × {heading}
          </p>
          {lines.map((line) => (
            <p key={line}>{line}</p>
          ))}
          <p className={styles.foot}>{foot}</p>
        </li>
      ))}
    </ul>
  );
}
