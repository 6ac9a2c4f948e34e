'use client';

import { CheckField } from '@/app/_fields/CheckField';
import { wasteRoomWords } from '@/app/_words/docket/wasteWords';
import type { Formatter } from '@/app/_words/formatter';
import { stripRoom } from '@/lib/exports/wasteStrip';
import type { PlannedSheet } from '@/lib/layout/apartSheets';
import type { JobInput } from '@/shared/schemas/request';
import type { Sheet } from '@/shared/schemas/workshop';
import { wasteOf } from './wasteOf';

type WasteLineChoiceProps = Readonly<{
  input: JobInput;
  paper: Sheet;
  /** Null while they are being laid out anew. */
  sheets: readonly PlannedSheet[] | null;
  formatter: Formatter;
  isChosen: boolean;
  onChoose: (isChosen: boolean) => void;
}>;

/** Whether the file has a line of words beside the art; with it, on how many pages that has room. */
export function WasteLineChoice(props: WasteLineChoiceProps) {
  const { input, paper, sheets, formatter, isChosen, onChoose } = props;
  return (
    <CheckField
      label="Print a line of words in the waste"
      checked={isChosen}
      onCommit={onChoose}
      hint={
        isChosen && sheets !== null
          ? wasteRoomWords({ ...roomOf(input, paper, sheets), ...stripRoom }, formatter)
          : `The job’s name and which sheet it is, at an edge that you cut off before pressing.${
              paper.form === 'roll' ? ' Marks show where to cut the roll.' : ''
            }`
      }
    />
  );
}

// Helpers

function roomOf(input: JobInput, paper: Sheet, sheets: readonly PlannedSheet[]) {
  const wastes = wasteOf(input, paper, sheets);
  const sum = (countOf: (sheet: PlannedSheet, at: number) => number) =>
    sheets.reduce((total, sheet, at) => total + sheet.count * countOf(sheet, at), 0);
  return {
    pages: sum(() => 1),
    withLine: sum((_, at) => (wastes[at]?.strip ? 1 : 0)),
    cuts: sum(({ cutsMm }) => cutsMm.length),
    markedCuts: sum((_, at) => new Set(wastes[at]?.marks.map(({ yMm }) => yMm)).size),
  };
}
