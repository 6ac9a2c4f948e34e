'use client';

import { useMemo } from 'react';
import { useToday } from '@/app/_clock/useToday';
import { Button } from '@/app/_controls/Button';
import { useTextContext } from '@/app/_fields/useTextContext';
import { drawnLettersWords, leftOutWords } from '@/app/_words/docket/coverWords';
import { coverName } from '@/app/_words/docket/transferWords';
import { formatterFor } from '@/app/_words/formatter';
import { coverTexts } from '@/lib/exports/cover';
import type { PlannedSheet } from '@/lib/layout/apartSheets';
import { missingLetters } from '@/lib/lettering/missingLetters';
import type { JobInput } from '@/shared/schemas/request';
import type { Sheet } from '@/shared/schemas/workshop';
import { coverOf } from './coverOf';
import styles from './SheetsFile.module.css';
import { TransferStatus } from './TransferStatus';
import { useCoverFile } from './useCoverFile';

type CoverPageProps = Readonly<{
  input: JobInput;
  paper: Sheet;
  /** Null while they are being laid out anew. */
  sheets: readonly PlannedSheet[] | null;
  /** Whether the transfers get a line of words in the waste. */
  withLine: boolean;
  blockedBy: string | undefined;
}>;

/** Hands out what the maker needs at the printer, on plain paper: on the transfers it would be pressed. */
export function CoverPage({ input, paper, sheets, withLine, blockedBy }: CoverPageProps) {
  const context = useTextContext();
  const formatter = formatterFor(context);
  const today = useToday();
  const { state, write, cancel } = useCoverFile();
  const cover = useMemo(
    () =>
      sheets === null
        ? null
        : coverOf({ input, paper, sheets, withLine, today, formatter: formatterFor(context) }),
    [input, paper, sheets, withLine, today, context],
  );
  const missing = useMemo(
    () => (cover === null ? [] : missingLetters(coverTexts(cover).map(({ text }) => text))),
    [cover],
  );
  const drawn = drawnLettersWords(
    missing.flatMap(({ letter, fate }) => (fate === 'picture' ? [letter] : [])),
  );
  const leftOut = leftOutWords(
    missing.flatMap(({ codePoints, fate }) => (fate === 'leftOut' ? [codePoints] : [])),
  );
  return (
    <>
      <div className={styles.buttons}>
        <Button
          blockedBy={blockedBy ?? (state.kind === 'writing' ? 'The cover page is being written.' : undefined)}
          onPress={() => cover !== null && write(coverName(input.job.name), cover)}
        >
          Cover page (plain paper)
        </Button>
      </div>
      <p className={styles.words}>
        {`What lies where, what to choose in the printer’s window, and a line to measure. ${drawn} ${leftOut}`.trim()}
      </p>
      <TransferStatus {...{ state, formatter }} onCancel={cancel} />
    </>
  );
}
