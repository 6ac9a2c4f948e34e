'use client';

import { ownEntry } from '@/lib/check/ownEntry';
import type { LaidOutPrint } from '@/lib/sheets/layOutJob';
import type { JobInput } from '@/shared/schemas/request';
import type { Sheet } from '@/shared/schemas/workshop';
import { useTextContext } from '../_fields/useTextContext';
import { speakerOf } from '../_text/speaker';
import styles from './PrintOnSheet.module.css';
import { SheetDrawing } from './SheetDrawing';
import { sizesWords } from './sizesWords';

type PrintOnSheetProps = Readonly<{
  print: LaidOutPrint;
  paper: Sheet;
  marginMm: number;
  input: JobInput;
}>;

/** One print of the job: a sheet of it drawn to scale, and how many there will be. */
export function PrintOnSheet({ print, paper, marginMm, input }: PrintOnSheetProps) {
  const speak = speakerOf(useTextContext());
  const { job, artworks } = input;
  const line = job.lines.find(({ id }) => id === print.lineId);
  const placement = line?.placements.find(({ id }) => id === print.placementId);
  const name = placement?.name ?? print.placementId;
  const artwork = ownEntry(artworks, placement?.artworkId ?? '');
  // A picture that is flipped already and sent mirrored lies the right way round on the paper.
  const reversed = (placement?.mirror ?? true) !== (artwork?.mirrored ?? false);
  const each = speak.number(print.perSheet, 0);
  const everySize = placement === undefined || placement.prints.length === 1;
  return (
    <li>
      <figure className={styles.figure}>
        <SheetDrawing
          {...{ print, paper, marginMm, name, reversed }}
          says={`${paper.name} with ${each} of ${name}${reversed ? ', mirrored' : ', not mirrored'}`}
        />
        <figcaption className={styles.words}>
          <h3>
            {name}, {each} to a sheet
          </h3>
          {job.lines.length > 1 && <p className={styles.quiet}>{line?.name}</p>}
          <p>
            {speak.size(print.widthMm, print.heightMm)}
            {!everySize && ` for ${sizesWords(print.sizes)}`}
          </p>
          <p>
            {speak.count(print.sheets, 'whole sheet')} for {speak.count(print.pieces, 'piece')}
            {print.perSheet > 1 &&
              `, ${print.spare === 0 ? 'no place' : speak.count(print.spare, 'place')} spare`}
          </p>
          <p className={styles.quiet}>{speak.share(print.wasteShare)} of the paper left over</p>
        </figcaption>
      </figure>
    </li>
  );
}
