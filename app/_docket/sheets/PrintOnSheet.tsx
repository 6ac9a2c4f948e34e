'use client';

import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { sizesWords } from '@/app/_words/docket/sizesWords';
import { formatterFor } from '@/app/_words/formatter';
import type { PlannedSheet } from '@/lib/layout/apartSheets';
import type { Sheet } from '@/shared/schemas/workshop';
import styles from './PrintOnSheet.module.css';
import { SheetDrawing } from './SheetDrawing';
import { namedPrint, printsOn } from './sheetNames';

type PrintOnSheetProps = Readonly<{
  sheet: PlannedSheet;
  paper: Sheet;
  marginMm: number;
  /** Addresses of small pictures, by artwork id. */
  previews: ReadonlyMap<string, string>;
}>;

/** Sheets of the job that are laid alike: one of them drawn to scale, and how many there will be. */
export function PrintOnSheet({ sheet, paper, marginMm, previews }: PrintOnSheetProps) {
  const { madeOf } = useJob().costs;
  const formatter = formatterFor(useTextContext());
  const prints = printsOn(madeOf, sheet.pieces);
  const pieces = sheet.pieces.map((piece) => {
    const { name, flipped, reversed, fit, artworkId } = namedPrint(madeOf, piece);
    const preview = previews.get(artworkId);
    // The picture is drawn as the file has it, flipped or not; a name is drawn as it will be read.
    return { ...piece, name, reversed: preview === undefined ? reversed : flipped, fit, preview };
  });
  const isRoll = sheet.lengthMm !== null;
  const cut = { widthMm: paper.widthMm, heightMm: sheet.lengthMm ?? paper.heightMm };
  const where = isRoll ? 'to a print' : sheet.spare > 0 ? 'on the last sheet' : 'to a sheet';
  const printed = sheet.pieces.reduce((sum, { widthMm, heightMm }) => sum + widthMm * heightMm, 0);
  const says = prints.map(
    ({ print, count }) =>
      `${formatter.number(count, 0)} of ${print.name}${print.reversed ? ', mirrored' : ', not mirrored'}`,
  );
  return (
    <li>
      <figure className={styles.figure}>
        <SheetDrawing
          {...{ pieces, marginMm }}
          paper={cut}
          cutsMm={sheet.cutsMm}
          says={`${paper.name} with ${says.join('; ')}`}
        />
        <figcaption className={styles.words}>
          <h3>
            {prints
              .map(({ print, count }) => `${print.name}, ${formatter.number(count, 0)} ${where}`)
              .join('; ')}
          </h3>
          <p className={styles.times}>× {formatter.number(sheet.count, 0)}</p>
          {prints.map(({ print }) => (
            <p key={print.key}>
              {prints.length > 1 && `${print.name}: `}
              {formatter.size(print.widthMm, print.heightMm)}
              {!print.isOnlySize &&
                ` for ${print.sizes === null ? 'all other sizes' : sizesWords(print.sizes)}`}
              {madeOf.job.lines.length > 1 && `, ${print.lineName}`}
            </p>
          ))}
          {sheet.spare > 0 && <p>{formatter.count(sheet.spare, 'place')} spare on it</p>}
          {isRoll && (
            <p>
              {formatter.length(cut.heightMm)} of the roll
              {sheet.cutsMm.length > 0 && `, cut into ${formatter.number(sheet.cutsMm.length + 1, 0)} strips`}
            </p>
          )}
          <p className={styles.quiet}>
            {formatter.share(1 - printed / (cut.widthMm * cut.heightMm))} of the paper left over
          </p>
        </figcaption>
      </figure>
    </li>
  );
}
