'use client';

import { useEffect, useRef } from 'react';
import { Button } from '@/app/_controls/Button';
import { useTextContext } from '@/app/_fields/useTextContext';
import { FileChooser } from '@/app/_files/FileChooser';
import { formatterFor } from '@/app/_words/formatter';
import { notACopyWords } from '@/app/_words/store/copyFileWords';
import { saveFailureWords } from '@/app/_words/store/saveFailureWords';
import { ArrivalPreview } from './ArrivalPreview';
import styles from './Copies.module.css';
import { COPY_TYPES } from './copyTypes';
import type { Arriving } from './useArriving';

type BringInProps = Readonly<{
  arriving: Arriving;
  /** What the button says; it takes copies and carried drafts alike. */
  button: string;
  level: 2 | 3;
  kind?: 'strong' | 'plain';
}>;

/** Chooses a copy or a carried file, shows what would come of it, takes it, and tells what came of it. */
export function BringIn({ arriving, button, level, kind = 'plain' }: BringInProps) {
  return (
    <div className={styles.bring}>
      <FileChooser
        button={button}
        kind={kind}
        label="Copy or carried file"
        accept={COPY_TYPES}
        onFiles={arriving.look}
      >
        A copy of everything, or a single thing carried from another device. You see what would come of it
        before anything changes.
      </FileChooser>
      <Arrived arriving={arriving} level={level} />
    </div>
  );
}

/** What has become of a file that was chosen or dropped, wherever that was. */
export function Arrived({ arriving, level }: Readonly<{ arriving: Arriving; level: 2 | 3 }>) {
  const formatter = formatterFor(useTextContext());
  const heading = useRef<HTMLHeadingElement>(null);
  const told = useRef<HTMLDivElement>(null);
  const { state } = arriving;
  const { kind } = state;
  useEffect(() => {
    if (kind === 'looked') heading.current?.focus();
    if (kind === 'told') told.current?.focus();
  }, [kind]);
  return (
    <>
      <div role="status" ref={told} tabIndex={-1} className={styles.told}>
        {kind === 'looking' && <p className={styles.words}>Reading “{state.name}”…</p>}
        {kind === 'taking' && <p className={styles.words}>Bringing it in…</p>}
        {kind === 'several' && (
          <p className={styles.wrong}>
            Those were {formatter.number(state.count)} files. Bring them in one at a time.
          </p>
        )}
        {kind === 'notACopy' && (
          <p className={styles.wrong}>
            “<bdi>{state.name}</bdi>” {notACopyWords(state.why, formatter)} Nothing here was changed.
          </p>
        )}
        {kind === 'told' && (
          <div className={styles.row}>
            <p>{state.sentence}</p>
            {arriving.undo !== null && <Button onPress={arriving.undo}>Undo</Button>}
          </div>
        )}
      </div>
      {(kind === 'looked' || kind === 'taking') && (
        <>
          {kind === 'looked' && state.problem !== null && (
            <p className={styles.wrong} role="alert">
              {saveFailureWords[state.problem]} Nothing here was changed.
            </p>
          )}
          <ArrivalPreview
            {...{ level, heading }}
            plan={state.look.plan}
            chosen={state.chosen}
            isBusy={kind === 'taking'}
            onChoose={arriving.choose}
            onTake={() => arriving.take('beside')}
            onReplace={() => arriving.take('replace')}
            onLeave={arriving.leave}
          />
        </>
      )}
    </>
  );
}
