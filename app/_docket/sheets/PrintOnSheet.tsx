'use client';

import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
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
  /** Whether the print fills sheets before this one. */
  isLastOfSeveral: boolean;
  /** Addresses of small pictures, by artwork id. */
  previews: ReadonlyMap<string, string>;
}>;

/** Sheets of the job that are laid alike: one of them drawn to scale, and how many there will be. */
export function PrintOnSheet({ sheet, paper, marginMm, isLastOfSeveral, previews }: PrintOnSheetProps) {
  const { madeOf } = useJob().costs;
  const formatter = formatterFor(useTextContext());
  const prints = printsOn(madeOf, sheet.pieces);
  const pieces = sheet.pieces.map((piece) => {
    const { name, flipped, reversed, fit, artworkId } = namedPrint(madeOf, piece);
    const preview = previews.get(artworkId);
    // The picture is drawn as the file has it, flipped or not; a name is drawn as it will be read.
    return { ...piece, name, reversed: preview === undefined ? reversed : flipped, fit, preview };
  });
  const drawn = { widthMm: paper.widthMm, heightMm: sheet.lengthMm ?? paper.heightMm };
  const says = prints.map(
    ({ print, count }) =>
      `${formatter.number(count, 0)} of ${print.name}${print.reversed ? ', mirrored' : ', not mirrored'}`,
  );
  const names = prints.map(({ print, count }) =>
    count === 1
      ? print.name
      : `${print.name}, ${formatter.number(count, 0)} on ${sheet.count === 1 ? 'it' : 'each'}`,
  );
  const cuts = sheet.cutsMm.length;
  const lines = cuts === 1 ? 'dashed line' : `${formatter.number(cuts, 0)} dashed lines`;
  const cutWords = cuts === 0 ? '' : `, cut across at the ${lines}`;
  return (
    <li>
      <figure className={styles.figure}>
        <SheetDrawing
          {...{ pieces, marginMm }}
          paper={drawn}
          cutsMm={sheet.cutsMm}
          says={`${paper.name} with ${says.join('; ')}${cutWords}`}
        />
        <figcaption className={styles.words}>
          <strong>{formatter.number(sheet.count, 0)} ×</strong> {names.join('; ')}
          {isLastOfSeveral && ', the last sheet'}
          {cutWords}
        </figcaption>
      </figure>
    </li>
  );
}
