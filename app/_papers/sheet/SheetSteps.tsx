import { classes } from '@/app/_controls/classes';
import type { Block, DrawnPress, PicturePair, TickGrid } from '@/lib/papers/paper';
import styles from './PaperSheet.module.css';
import { SheetDrawing } from './SheetGoods';
import { SheetMarkF } from './SheetMarkF';
import type { PictureAddresses } from './usePictureAddresses';

type Of<Kind extends Block['kind']> = Extract<Block, { readonly kind: Kind }>;

/** A step of the work with what is ticked off. */
export function SheetStep({ block }: Readonly<{ block: Of<'step'> }>) {
  const { heading, aside, lines, ticks, grid, tally } = block;
  return (
    <div className={styles.block}>
      <StepHead {...{ heading, aside }} />
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {ticks.length > 0 && (
        <ul className={styles.inRow}>
          {ticks.map((text, at) => (
            // Two sizes may bear one name.
            // biome-ignore lint/suspicious/noArrayIndexKey: as said
            <li key={at}>
              <Square /> {text}
            </li>
          ))}
        </ul>
      )}
      {grid !== null && <Grid grid={grid} />}
      {tally.labels.length > 0 && (
        <>
          <p>{tally.words}</p>
          <ul className={styles.sign}>
            {tally.labels.map((label) => (
              <li key={label}>{label}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}

type SheetPressesProps = Readonly<{ block: Of<'presses'>; pictures: PictureAddresses }>;

/** What is done at the press, print by print. */
export function SheetPresses({ block, pictures }: SheetPressesProps) {
  return block.presses.map((press) => (
    <div key={press.heading} className={styles.block}>
      <StepHead {...press} />
      <div className={styles.goods}>
        <div className={styles.drawings}>
          <Shown {...{ press, pictures }} />
        </div>
        <div className={styles.told}>
          {press.pair !== null && press.pair.under !== '' && (
            <p className={styles.foot}>{press.pair.under}</p>
          )}
          {press.strong !== '' && <p className={styles.seller}>{press.strong}</p>}
          {press.lines.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </div>
        <Sizes press={press} />
      </div>
    </div>
  ));
}

// Helpers

type ShownProps = Readonly<{ press: DrawnPress; pictures: PictureAddresses }>;

/** A picture as it lies on the paper, and as it is seen; where it cannot be shown the piece is drawn in its place. */
function Shown({ press: { pair, drawings }, pictures }: ShownProps) {
  const address = pair?.picture == null ? undefined : pictures.get(pair.picture);
  const drawn = address === undefined ? drawings : [];
  const sides = pair === null ? [] : drawn.length > 0 ? [pair.onPaper] : [pair.onPaper, pair.asSeen];
  return (
    <>
      {pair !== null && <Sides {...{ pair, sides, address }} />}
      {drawn.map((drawing) => (
        <SheetDrawing key={drawing.caption} {...{ drawing, pictures }} />
      ))}
    </>
  );
}

type SidesProps = Readonly<{
  pair: PicturePair;
  sides: readonly PicturePair['onPaper'][];
  address: string | undefined;
}>;

const Sides = ({ pair: { widthMm: width, heightMm: height }, sides, address }: SidesProps) =>
  sides.map(({ caption, isFlipped, reads }) => {
    return (
      <figure key={caption} className={styles.drawing}>
        <svg aria-hidden="true" focusable="false" viewBox={`0 0 ${width} ${height}`}>
          {address === undefined ? (
            <SheetMarkF {...{ width, height, reads }} />
          ) : (
            <image
              {...{ width, height }}
              href={address}
              preserveAspectRatio="xMidYMid slice"
              transform={isFlipped ? `matrix(-1 0 0 1 ${width} 0)` : undefined}
            />
          )}
        </svg>
        <figcaption>{caption}</figcaption>
      </figure>
    );
  });

const Square = () => <span className={styles.tick} aria-hidden="true" />;

const StepHead = ({ heading, aside }: Readonly<{ heading: string; aside: string }>) => (
  <div className={styles.stepHead}>
    <p className={styles.strong}>{heading}</p>
    <p className={styles.foot}>{aside}</p>
  </div>
);

/** So many columns have room beside their row's name on a phone. */
const MOST_BESIDE = 3;

function Grid({ grid: { heads, last, rows } }: Readonly<{ grid: TickGrid }>) {
  return (
    <div className={styles.tableRoom}>
      <table className={classes(styles.table, styles.short, heads.length > MOST_BESIDE && styles.named)}>
        <thead>
          <tr>
            <td />
            {[...heads, ...(last === '' ? [] : [last])].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, place) => (
            // Two lines may bear one name.
            // biome-ignore lint/suspicious/noArrayIndexKey: as said
            <tr key={place}>
              <th scope="row">
                <bdi>{row.name}</bdi>
              </th>
              {row.ticks.map((text, at) => (
                <td key={heads[at] ?? at}>
                  {text !== '' && (
                    <>
                      <Square />
                      {text}
                    </>
                  )}
                </td>
              ))}
              {last !== '' && <td>{row.last}</td>}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** Nobody ticks on a screen: of the squares as many are shown as say what they are. */
const MOST_SQUARES = 12;

function Sizes({ press: { heads, sizes } }: Readonly<{ press: DrawnPress }>) {
  return (
    <div className={styles.tableRoom}>
      <table className={classes(styles.table, styles.short)}>
        <thead>
          <tr>
            {[heads.size, heads.good, heads.ticks, heads.spares].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {sizes.map(({ size, good, ticks, scrap, spares }) => (
            <tr key={size}>
              <th scope="row">
                <bdi>{size}</bdi>
              </th>
              <td>{good}</td>
              <td>
                {Array.from({ length: Math.min(MOST_SQUARES, ticks) }, (_, at) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: squares are alike
                  <Square key={at} />
                ))}
              </td>
              <td>
                {Array.from({ length: scrap }, (_, at) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: squares are alike
                  <Square key={at} />
                ))}
                {spares}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
