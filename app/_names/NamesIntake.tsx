'use client';

import { startTransition, useEffect, useId, useRef, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import { TextField } from '@/app/_fields/TextField';
import { FileChooser } from '@/app/_files/FileChooser';
import type { Wording } from '@/app/_words/findings/wording';
import { NOT_REMEMBERED, NOT_REMEMBERED_ERASED, PERSONAL } from '@/app/_words/names/intakeWords';
import { wantedPieces } from '@/shared/wantedPieces';
import { IntakePreview } from './IntakePreview';
import styles from './Names.module.css';
import type { NamesWorkspace } from './namesWorkspace';
import { type NamedLine, printedNames } from './orderNames';
import { type ReadSource, readFile, readPasted } from './readSource';
import { useIntake } from './useIntake';

type NamesIntakeProps = Readonly<{
  workspace: NamesWorkspace;
  orderId: string;
  named: NamedLine;
  sizes: readonly string[];
}>;

/** Where names are pasted or read from a file, looked at and taken into the order. */
export function NamesIntake({ workspace, orderId, named, sizes }: NamesIntakeProps) {
  const area = useId();
  const customerId = workspace.orders.find(({ id }) => id === orderId)?.order.customerId ?? '';
  const isErased = (workspace.customers[customerId]?.erasedOn ?? null) !== null;
  const { text, setText, look, setLook, isKept } = useIntake(
    `${orderId} ${named.jobId} ${named.line.id}`,
    isErased,
  );
  const [refused, setRefused] = useState<Wording | null>(null);
  const [taken, setTaken] = useState<string | null>(null);
  /** What takes the focus once it is there: the button that was pressed goes. */
  const next = useRef<string | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is there once one of these is another
  useEffect(() => {
    if (next.current !== null) focusById(next.current);
    next.current = null;
  }, [look?.table, taken]);
  const show = (read: ReadSource) => {
    // Judging thousands of rows waits for its own turn, after the reading of them.
    startTransition(() =>
      setLook(
        read.state === 'refused'
          ? null
          : {
              table: read.table,
              leftOut: [],
              isAdded: true,
              withCounts: wantedPieces([named.line]) === 0,
              isPrinted: printedNames(named) !== 'none',
            },
      ),
    );
    if (read.state === 'read') next.current = `${area}-read`;
    setRefused(read.state === 'refused' ? read.why : null);
    setTaken(null);
  };
  return (
    <div className={styles.intake}>
      <p role="status" className={styles.taken} id={`${area}-taken`} tabIndex={-1}>
        {taken}
      </p>
      {look === null ? (
        <>
          <div
            onPaste={(event) => {
              const pasted = event.clipboardData.getData('text/plain');
              const field = event.target;
              // Browsers take seconds to put hundreds of lines into a field one by one; they are read at once instead.
              if (!/[\r\n]/.test(pasted) || !(field instanceof HTMLTextAreaElement)) return;
              event.preventDefault();
              const { value, selectionStart, selectionEnd } = field;
              const whole = value.slice(0, selectionStart) + pasted + value.slice(selectionEnd);
              const read = readPasted(whole, sizes);
              if (read.state === 'read') setText(whole);
              show(read);
            }}
          >
            <TextField
              id={area}
              label="Names, as you got them"
              value={text}
              rows={5}
              width="full"
              isTrimmed={false}
              hint="A table from a spreadsheet or a message, one line for each person: name, size, number."
              onCommit={setText}
            />
          </div>
          <div className={styles.ways}>
            <Button
              kind="strong"
              blockedBy={text.trim() === '' ? 'Paste or type the names first.' : undefined}
              onPress={() => show(readPasted(text, sizes))}
            >
              Look at them
            </Button>
            {text !== '' && (
              <Button
                kind="quiet"
                onPress={() => {
                  setText('');
                  focusById(area);
                }}
              >
                Empty the field
              </Button>
            )}
          </div>
          <FileChooser
            button="Read a file"
            label="File of names"
            accept=".csv,.tsv,.txt,text/csv,text/plain,text/tab-separated-values"
            onFiles={([file]) => file !== undefined && void readFile(file, sizes).then(show)}
          >
            CSV, as every spreadsheet saves it.
          </FileChooser>
          <p className={styles.more}>{PERSONAL}</p>
        </>
      ) : (
        <IntakePreview
          {...{ workspace, orderId, named, sizes, look }}
          id={`${area}-read`}
          onLook={(change) => setLook((now) => (now === null ? null : { ...now, ...change }))}
          onTaken={(words, left) => {
            setTaken(words);
            next.current = `${area}-taken`;
            setLook(left === null ? null : { ...look, table: left });
            if (left === null) setText('');
          }}
          onBack={() => {
            setLook(null);
            next.current = area;
          }}
        />
      )}
      <div aria-live="polite">
        {!isKept && <p className={styles.wrong}>{isErased ? NOT_REMEMBERED_ERASED : NOT_REMEMBERED}</p>}
        {refused !== null && (
          <p className={styles.wrong}>
            {refused.sentence} {refused.detail}
          </p>
        )}
      </div>
    </div>
  );
}
