'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { useJob } from '@/app/_docket/common/useJob';
import { useTextContext } from '@/app/_fields/useTextContext';
import { saveBytes } from '@/app/_files/saveBytes';
import { isGone } from '@/app/_network/isGone';
import { lazy } from '@/app/_network/lazy';
import { findingWords } from '@/app/_words/findings/findingWords';
import { formatterFor } from '@/app/_words/formatter';
import { PART_GONE } from '@/app/_words/missingAnswerWords';
import { ownEntry } from '@/lib/job/ownEntry';
import type { PlannedSheet } from '@/lib/layout/apartSheets';
import { isStanding } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import type { Sheet } from '@/shared/schemas/workshop';
import styles from './SheetsFile.module.css';
import { namedPrint } from './sheetNames';
import { sheetPictures } from './sheetPictures';
import { MOST_PAGES, sheetsFile } from './sheetsFile';

type SheetsFileProps = Readonly<{
  paper: Sheet;
  /** Null while they are being laid out anew. */
  sheets: readonly PlannedSheet[] | null;
  /** Why there is no telling how they lie is told elsewhere. */
  hasFailed: boolean;
}>;

type Written =
  | { readonly kind: 'idle' }
  | { readonly kind: 'busy' }
  | { readonly kind: 'done'; readonly lost: readonly string[] }
  | { readonly kind: 'failed'; readonly why: string };

const lazySheetWriter = lazy(() =>
  import('@/lib/exports/writeSheets').then(({ writeSheets }) => writeSheets),
);

/** Hands out the sheets as a file that prints at true size; not while a stop stands. */
export function SheetsFile({ paper, sheets, hasFailed }: SheetsFileProps) {
  const { findings, workspace, costs } = useJob();
  const input = costs.madeOf;
  const context = useTextContext();
  const formatter = formatterFor(context);
  const [written, setWritten] = useState<Written>({ kind: 'idle' });
  const stop = findings.find(isStanding);
  const count = (sheets ?? []).reduce((sum, sheet) => sum + sheet.count, 0);
  const kinds = sheets?.length ?? 0;
  const waiting =
    sheets === null
      ? 'The sheets are being laid out.'
      : written.kind === 'busy'
        ? 'The file is being written.'
        : undefined;
  const stopped = stop === undefined ? undefined : findingWords(stop, context).sentence;
  const tooMany =
    count > MOST_PAGES ? `A file holds at most ${formatter.number(MOST_PAGES, 0)} pages.` : undefined;
  const write = async (pages: 'every' | 'oneOfEach') => {
    if (sheets === null) return;
    setWritten({ kind: 'busy' });
    try {
      const writeSheets = await lazySheetWriter.fetch().catch(notFetched);
      if (typeof writeSheets === 'string') return setWritten({ kind: 'failed', why: writeSheets });
      const { pictures, lost } = await sheetPictures(input, sheets, workspace.readFile);
      const bytes = await writeSheets(sheetsFile({ input, paper, sheets, pages, pictures }));
      saveBytes(`${input.job.name}, sheets.pdf`, bytes, 'application/pdf');
      setWritten({ kind: 'done', lost });
    } catch (error) {
      setWritten({ kind: 'failed', why: error instanceof Error ? error.message : String(error) });
    }
  };
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
        {emptyWords(input, sheets ?? [])}
      </p>
      {sheets === null && !hasFailed && (
        <p className={styles.words}>How many pages it takes is being worked out.</p>
      )}
      {stopped !== undefined && (
        <p>
          <strong>Not while a stop stands.</strong> {stopped}
        </p>
      )}
      <div className={styles.buttons}>
        <Button kind="strong" blockedBy={stopped ?? waiting ?? tooMany} onPress={() => void write('every')}>
          {sheets === null ? 'Every sheet' : `Every sheet, ${formatter.count(count, 'page')}`}
        </Button>
        {kinds < count && (
          <Button blockedBy={stopped ?? waiting} onPress={() => void write('oneOfEach')}>
            One of each, {formatter.count(kinds, 'page')}
          </Button>
        )}
      </div>
      <p role="status" className={styles.words}>
        {writtenWords(written)}
      </p>
    </section>
  );
}

// Helpers

/** @returns why the writer is not there, to follow a colon */
async function notFetched(error: unknown): Promise<string> {
  const gone = await isGone(error instanceof Error ? error.message : '');
  return gone
    ? `${PART_GONE}. Open the page anew to get it; what you typed is kept`
    : 'the part of the app that does it could not be fetched. Press again once there is a network';
}

function writtenWords(written: Written): string {
  switch (written.kind) {
    case 'idle':
      return '';
    case 'busy':
      return 'The file is being written.';
    case 'done':
      return [
        'The file is written.',
        ...(written.lost.length === 0
          ? []
          : [`The picture of ${written.lost.join(' and ')} could not be read: its place stays empty.`]),
      ].join(' ');
    case 'failed':
      return `The file could not be written: ${written.why}.`;
    default:
      return written satisfies never;
  }
}

/** Which prints leave their place empty, since no file is kept of them. */
function emptyWords(input: JobInput, sheets: readonly PlannedSheet[]): string {
  const prints = sheets.flatMap(({ pieces }) => pieces.map((piece) => namedPrint(input, piece)));
  const bare = prints.filter(({ artworkId }) => ownEntry(input.artworks, artworkId)?.picture == null);
  const names = new Set(bare.map(({ name }) => name));
  return names.size === 0
    ? ''
    : `No picture file is kept for ${[...names].join(' and ')}: its place stays empty.`;
}
