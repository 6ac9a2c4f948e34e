import styles from './PlaceDrawing.module.css';

type PaperDrawingProps = Readonly<{
  widthMm: number;
  heightMm: number;
  /** Whether it lies mirrored on the paper. */
  isReversed: boolean;
  /** Address of its picture, and whether that lies in the file as on the paper; null where none is kept. */
  picture: { readonly src: string; readonly isFlipped: boolean } | null;
}>;

/** A print as it lies on the paper: its picture, or where none is kept a letter, mirrored as the print is. */
export function PaperDrawing({ widthMm, heightMm, isReversed, picture }: PaperDrawingProps) {
  const scale = 60 / Math.max(widthMm, heightMm);
  const [width, height] = [widthMm * scale, heightMm * scale];
  const letter = Math.min(width, height) / 10;
  const flipped = `translate(${width} 0) scale(-1 1)`;
  return (
    <figure className={styles.paper}>
      <svg
        className={styles.onPaper}
        viewBox={`-1 -1 ${width + 2} ${height + 2}`}
        width={width}
        height={height}
        aria-hidden="true"
      >
        {picture === null ? (
          <path
            className={styles.letter}
            transform={`${isReversed ? flipped : ''} translate(${width / 2} ${height / 2}) scale(${letter})`}
            d="M-2 3V-3H.6A1.7 1.7 0 0 1 .6.4H-2M.2 .4L2.2 3"
          />
        ) : (
          <image
            href={picture.src}
            width={width}
            height={height}
            transform={isReversed === picture.isFlipped ? undefined : flipped}
          />
        )}
        <rect className={styles.edge} width={width} height={height} />
      </svg>
      <figcaption>{isReversed ? 'mirrored on paper' : 'not mirrored'}</figcaption>
    </figure>
  );
}
