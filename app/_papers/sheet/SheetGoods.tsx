import { placeDrawing } from '@/lib/papers/draw/outlines';
import type { Block, Drawing } from '@/lib/papers/paper';
import styles from './PaperSheet.module.css';
import { SheetMarkF } from './SheetMarkF';
import type { PictureAddresses } from './usePictureAddresses';

type SheetGoodsProps = Readonly<{
  block: Extract<Block, { readonly kind: 'goods' }>;
  pictures: PictureAddresses;
}>;

/** What is made, drawn by the outlines of the file, and told beside it. */
export function SheetGoods({ block, pictures }: SheetGoodsProps) {
  return (
    <div className={styles.block}>
      {block.goods.map(({ drawings, heading, lines, prints }) => (
        <div key={heading} className={styles.goods}>
          <div className={styles.drawings}>
            {drawings.map((drawing, at) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: sides of one piece in their order
              <SheetDrawing key={at} {...{ drawing, pictures }} />
            ))}
          </div>
          <div className={styles.told}>
            <p className={styles.strong}>{heading}</p>
            {lines.map((line) => (
              <p key={line}>{line}</p>
            ))}
            {prints.map(({ lead, text }) => (
              <p key={`${lead} ${text}`}>
                <strong>{lead}</strong>
                <br />
                {text}
              </p>
            ))}
          </div>
        </div>
      ))}
    </div>
  );
}

// Helpers

type SheetDrawingProps = Readonly<{ drawing: Drawing; pictures: PictureAddresses }>;

/** Its words stand beside it, so that it is a picture to the eye alone. */
export function SheetDrawing({ drawing, pictures }: SheetDrawingProps) {
  const placed = placeDrawing(drawing);
  const edge = 0.03 * placed.heightMm;
  const lowest = Math.max(placed.heightMm, ...placed.prints.map(({ print, yMm }) => yMm + print.heightMm));
  return (
    <figure className={styles.drawing}>
      <svg
        aria-hidden="true"
        focusable="false"
        viewBox={[-placed.halfWidthMm - edge, -edge, 2 * (placed.halfWidthMm + edge), lowest + 2 * edge].join(
          ' ',
        )}
      >
        {placed.paths.map((path, at) => (
          <path
            key={path}
            d={path}
            className={at === 0 ? styles.outline : styles.seam}
            transform={`scale(${placed.grown})`}
          />
        ))}
        {placed.prints.map(({ print, xMm, yMm }, at) => {
          const address = print.picture === null ? undefined : pictures.get(print.picture);
          const place = { x: xMm - print.widthMm / 2, y: yMm, width: print.widthMm, height: print.heightMm };
          if (address === undefined && print.reads !== undefined)
            // biome-ignore lint/suspicious/noArrayIndexKey: prints of one side in their order
            return <SheetMarkF key={at} {...place} reads={print.reads} />;
          return address === undefined ? (
            // biome-ignore lint/suspicious/noArrayIndexKey: prints of one side in their order
            <rect key={at} {...place} className={styles.place} />
          ) : (
            // biome-ignore lint/suspicious/noArrayIndexKey: prints of one side in their order
            <image key={at} {...place} href={address} preserveAspectRatio="xMidYMid slice" />
          );
        })}
      </svg>
      <figcaption>{drawing.caption}</figcaption>
    </figure>
  );
}
