'use client';

import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { sizesWords } from '@/app/_words/docket/sizesWords';
import { formatterFor } from '@/app/_words/formatter';
import type { PlannedSheet } from '@/lib/layout/apartSheets';
import type { Sheet } from '@/shared/schemas/workshop';
import styles from './SheetKinds.module.css';
import { printsOn } from './sheetNames';

type SheetKindsProps = Readonly<{ sheets: readonly PlannedSheet[]; paper: Sheet }>;

/** What lies on each kind of sheet: sizes, free places, cuts, and what is left over. */
export function SheetKinds({ sheets, paper }: SheetKindsProps) {
  const { madeOf } = useJob().costs;
  const formatter = formatterFor(useTextContext());
  return (
    <ul className={styles.kinds}>
      {sheets.map((sheet, index) => {
        const isRoll = sheet.lengthMm !== null;
        const heightMm = sheet.lengthMm ?? paper.heightMm;
        const where = isRoll ? 'to a print' : sheet.spare > 0 ? 'on the last sheet' : 'to a sheet';
        const printed = sheet.pieces.reduce((sum, piece) => sum + piece.widthMm * piece.heightMm, 0);
        const told = [
          ...printsOn(madeOf, sheet.pieces).map(
            ({ print, count }) =>
              `${print.name}, ${formatter.number(count, 0)} ${where}: ${formatter.size(print.widthMm, print.heightMm)}${
                print.isOnlySize
                  ? ''
                  : ` for ${print.sizes === null ? 'all other sizes' : sizesWords(print.sizes)}`
              }${madeOf.job.lines.length > 1 ? `, ${print.lineName}` : ''}`,
          ),
          ...(sheet.spare > 0 ? [`${formatter.count(sheet.spare, 'place')} spare on it`] : []),
          ...(isRoll ? [`${formatter.length(heightMm)} of the roll`] : []),
          ...(sheet.cutsMm.length > 0
            ? [`cut into ${formatter.number(sheet.cutsMm.length + 1, 0)} strips`]
            : []),
          `${formatter.share(1 - printed / (paper.widthMm * heightMm))} of the paper left over`,
        ];
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: sheets have no name but their place in the run
          <li key={index}>
            <strong>{formatter.number(sheet.count, 0)} ×</strong> {told.join('; ')}.
          </li>
        );
      })}
    </ul>
  );
}
