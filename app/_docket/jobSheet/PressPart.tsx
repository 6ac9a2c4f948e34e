import type { ArtworkPreviews } from '@/app/_docket/common/useArtworkPreviews';
import { choiceWords, jobChoices } from '@/app/_words/docket/choiceWords';
import {
  heatWords,
  piecesPerBox,
  placeWords,
  printSizesWords,
  recipeWords,
} from '@/app/_words/docket/jobSheetWords';
import type { Formatter } from '@/app/_words/formatter';
import { ownEntry } from '@/lib/job/ownEntry';
import type { SheetPlacement } from '@/lib/jobSheet/jobSheet';
import type { JobInput } from '@/shared/schemas/request';
import { PaperDrawing } from './PaperDrawing';
import { PlaceDrawing } from './PlaceDrawing';
import styles from './PressPart.module.css';

type PressPartProps = Readonly<{
  input: JobInput;
  of: SheetPlacement;
  /** True where many share the page: rows of boxes are then shorter. */
  isDense: boolean;
  /** False where all prints are pressed alike, and the page says how in one place. */
  withRecipe: boolean;
  previews: ArtworkPreviews;
  formatter: Formatter;
}>;

const MOST_BOXES = 18;
const MOST_BOXES_DENSE = 10;

/** One print at the press: where it sits, how it is pressed, and a box for every good piece. */
export function PressPart({
  input,
  of: { lineId, placement, prints, sizes },
  isDense,
  withRecipe,
  previews,
  formatter,
}: PressPartProps) {
  const line = input.job.lines.find(({ id }) => id === lineId);
  const blank = ownEntry(input.blanks, line?.blankId ?? '');
  const widest = blank?.sizes.find(({ name }) => name === sizes[0]?.size)?.widthMm ?? null;
  const [first] = prints;
  const most = isDense ? MOST_BOXES_DENSE : MOST_BOXES;
  const per = piecesPerBox(Math.max(...sizes.map(({ wanted }) => wanted)), most);
  const artwork = ownEntry(input.artworks, placement.artworkId);
  const src = previews.get(placement.artworkId);
  const isFlipped = artwork?.mirrored ?? false;
  const picture = src === undefined ? null : { src, isFlipped };
  return (
    <div className={isDense ? styles.dense : styles.press}>
      {first !== undefined && (
        <div className={styles.drawing}>
          <PlaceDrawing
            kind={blank?.kind}
            position={placement.position}
            itemWidthMm={widest}
            widthMm={first.widthMm}
            heightMm={first.heightMm}
            dropFromCollarMm={placement.dropFromCollarMm}
            picture={picture}
            says={`${placement.name} on the ${choiceWords(jobChoices.position, placement.position)}`}
          />
          {!isDense && (
            <PaperDrawing
              widthMm={first.widthMm}
              heightMm={first.heightMm}
              isReversed={placement.mirror !== isFlipped}
              picture={picture}
            />
          )}
        </div>
      )}
      <div className={styles.how}>
        {withRecipe && <p className={styles.heat}>{heatWords(placement.recipe, formatter)}</p>}
        <p>
          <strong>{printSizesWords(prints, formatter)}</strong>, {placeWords(placement, formatter)}
        </p>
        {withRecipe && recipeWords(placement.recipe, formatter).map((words) => <p key={words}>{words}</p>)}
        {artwork !== undefined && !isDense && (
          <p>
            picture: <bdi>{artwork.name}</bdi>
          </p>
        )}
      </div>
      <table className={styles.sizes}>
        <thead>
          <tr>
            <th className={styles.head} scope="col">
              size
            </th>
            <th className={styles.head} scope="col">
              good
            </th>
            <th className={styles.head} scope="col">
              {per === 1 ? 'tick each good one' : `a box is ${formatter.number(per)} good ones`}
            </th>
            <th className={styles.head} scope="col">
              spares
            </th>
          </tr>
        </thead>
        <tbody>
          {sizes.map(({ size, wanted, take }) => (
            <tr key={size}>
              <th className={styles.size} scope="row">
                <bdi>{size}</bdi>
              </th>
              <td className={styles.cell}>
                <strong>{formatter.number(wanted)}</strong>
              </td>
              <td className={styles.cell}>
                <Boxes count={Math.ceil(wanted / per)} isDense={isDense} />
              </td>
              <td className={styles.cell}>
                {take - wanted === 0 ? (
                  'none'
                ) : take - wanted > 4 || per > 1 ? (
                  formatter.number(take - wanted)
                ) : (
                  <Boxes count={take - wanted} isDense={isDense} isSpare />
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

// Helpers

type BoxesProps = Readonly<{ count: number; isDense: boolean; isSpare?: boolean }>;

function Boxes({ count, isDense, isSpare = false }: BoxesProps) {
  // Still a box for a pencil: 3 mm.
  const side = isDense ? 11.5 : 12.5;
  const pitch = isDense ? 14 : 17;
  return (
    <svg
      className={styles.boxes}
      width={count * pitch}
      height={side + 2.5}
      viewBox={`0 0 ${count * pitch} ${side + 2.5}`}
      role="img"
      aria-label={isSpare ? `${count}` : `${count} to tick`}
    >
      {Array.from({ length: count }, (_, index) => index * pitch).map((x) => (
        <g key={x} transform={`translate(${x} 0)`}>
          <rect className={isSpare ? styles.spare : styles.good} x="1" y="1" width={side} height={side} />
          {isSpare && <path className={styles.hatch} d="M1 7.5L7.5 1M1 12.5L12.5 1M7.5 12.5L12.5 7.5" />}
        </g>
      ))}
    </svg>
  );
}
