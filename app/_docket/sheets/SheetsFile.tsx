'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import {
  copiesWords,
  everySheetName,
  oneOfEachName,
  sizeWords,
  tooLongWords,
} from '@/app/_words/docket/transferWords';
import { findingWords } from '@/app/_words/findings/findingWords';
import { type Formatter, formatterFor } from '@/app/_words/formatter';
import { ownEntry } from '@/lib/job/ownEntry';
import type { PlannedSheet } from '@/lib/layout/apartSheets';
import { isStanding } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import type { Sheet } from '@/shared/schemas/workshop';
import { CoverPage } from './CoverPage';
import styles from './SheetsFile.module.css';
import { namedPrint } from './sheetNames';
import { MOST_PAGES, sheetsFile } from './sheetsFile';
import { TransferStatus } from './TransferStatus';
import { useTransferFile } from './useTransferFile';
import { WasteLineChoice } from './WasteLineChoice';

type SheetsFileProps = Readonly<{
  paper: Sheet;
  /** Null while they are being laid out anew. */
  sheets: readonly PlannedSheet[] | null;
  /** Why there is no telling how they lie is told elsewhere. */
  hasFailed: boolean;
}>;

/** Hands out the sheets as a file that prints at true size; not while a stop stands. */
export function SheetsFile({ paper, sheets, hasFailed }: SheetsFileProps) {
  const { findings, workspace, costs } = useJob();
  const input = costs.madeOf;
  const context = useTextContext();
  const formatter = formatterFor(context);
  const { state, write, cancel } = useTransferFile(workspace.readFile);
  const [withLine, setWithLine] = useState(false);
  const stop = findings.find(isStanding);
  const count = (sheets ?? []).reduce((sum, sheet) => sum + sheet.count, 0);
  const kinds = sheets?.length ?? 0;
  const waiting =
    sheets === null
      ? 'The sheets are being laid out.'
      : state.kind === 'writing'
        ? 'The file is being written.'
        : undefined;
  const stopped = stop === undefined ? undefined : findingWords(stop, context).sentence;
  const tooMany =
    count > MOST_PAGES ? `A file holds at most ${formatter.number(MOST_PAGES, 0)} pages.` : undefined;
  const counts = (sheets ?? []).map(({ count: pages }) => pages);
  const press = (pages: 'every' | 'oneOfEach') => {
    if (sheets === null) return;
    const name =
      pages === 'every' ? everySheetName(input.job.name, count) : oneOfEachName(input.job.name, counts);
    write(name, sheetsFile({ input, paper, sheets, pages, withLine }), input);
  };
  const tooLong = longPages(input, paper, sheets ?? []);
  return (
    <section className={styles.file} aria-labelledby="sheets-file-heading">
      <h3 className="visuallyHidden" id="sheets-file-heading">
        Sheets to print
      </h3>
      <p className={styles.words}>
        A PDF of pages{' '}
        {paper.form === 'roll'
          ? `${formatter.length(paper.widthMm)} wide and as long as their prints`
          : formatter.size(paper.widthMm, paper.heightMm)}
        . Print it at “actual size”: it lies on the paper as it is drawn here.{' '}
        {emptyWords(input, sheets ?? [])} {fileSizeWords(input, sheets ?? [], formatter)}
      </p>
      {tooLong !== null && stopped === undefined && (
        <p>
          <strong>Longer than the printer prints.</strong> {tooLongWords(tooLong, formatter)}
        </p>
      )}
      {sheets === null && !hasFailed && (
        <p className={styles.words}>How many pages it takes is being worked out.</p>
      )}
      {stopped !== undefined && (
        <p>
          <strong>Not while a stop stands.</strong> {stopped}
        </p>
      )}
      <WasteLineChoice {...{ input, paper, sheets, formatter }} isChosen={withLine} onChoose={setWithLine} />
      <div className={styles.buttons}>
        <Button kind="strong" blockedBy={stopped ?? waiting ?? tooMany} onPress={() => press('every')}>
          {sheets === null ? 'Every sheet' : `Every sheet, ${formatter.count(count, 'page')}`}
        </Button>
        {kinds < count && (
          <Button blockedBy={stopped ?? waiting} onPress={() => press('oneOfEach')}>
            One of each, {formatter.count(kinds, 'page')}
          </Button>
        )}
      </div>
      {kinds < count && <p className={styles.words}>{copiesWords(counts, formatter)}</p>}
      <TransferStatus {...{ state, formatter }} onCancel={cancel} />
      <CoverPage {...{ input, paper, sheets, withLine }} blockedBy={stopped ?? waiting} />
    </section>
  );
}

// Helpers

/** Which prints leave their place empty, since no file is kept of them. */
function emptyWords(input: JobInput, sheets: readonly PlannedSheet[]): string {
  const prints = sheets.flatMap(({ pieces }) => pieces.map((piece) => namedPrint(input, piece)));
  const bare = prints.filter(({ artworkId }) => ownEntry(input.artworks, artworkId)?.picture == null);
  const names = new Set(bare.map(({ name }) => name));
  return names.size === 0
    ? ''
    : `No picture file is kept for ${[...names].join(' and ')}: ${names.size === 1 ? 'its place stays' : 'their places stay'} empty.`;
}

/** How large the file gets, by the pictures on its sheets. */
function fileSizeWords(input: JobInput, sheets: readonly PlannedSheet[], formatter: Formatter): string {
  const ids = new Set(
    sheets.flatMap(({ pieces }) => pieces.map((piece) => namedPrint(input, piece).artworkId)),
  );
  const kept = [...ids].flatMap((id) => {
    const artwork = ownEntry(input.artworks, id);
    return artwork?.picture ? [{ name: artwork.name, picture: artwork.picture }] : [];
  });
  return sizeWords(kept, formatter);
}

/** What a page is too long for; null where the printer takes it or nobody said how much it takes. */
function longPages({ job, workshop }: JobInput, paper: Sheet, sheets: readonly PlannedSheet[]) {
  const printer = workshop.printers.find(({ id }) => id === job.printerId);
  const longestPageMm = printer?.longestPageMm ?? null;
  const pageMm = Math.max(0, ...sheets.map(({ lengthMm }) => lengthMm ?? paper.heightMm));
  return printer === undefined || longestPageMm === null || pageMm <= longestPageMm
    ? null
    : { printerName: printer.name, longestPageMm, pageMm, isRoll: paper.form === 'roll' };
}
