'use client';

import { useEffect, useRef } from 'react';
import { Button } from '@/app/_controls/Button';
import { useTextContext } from '@/app/_fields/useTextContext';
import { lazy } from '@/app/_network/lazy';
import { PartMissing } from '@/app/_network/PartMissing';
import { useLazy } from '@/app/_network/useLazy';
import { formatterFor } from '@/app/_words/formatter';
import { toldWords, unsavedWords } from '@/app/_words/store/arrivalWords';
import { notACopyWords } from '@/app/_words/store/copyFileWords';
import { saveFailureWords } from '@/app/_words/store/saveFailureWords';
import { ArrivedLinks } from './ArrivedLinks';
import styles from './Copies.module.css';
import type { Arriving } from './useArriving';

/** Seldom needed, so its code is fetched only then. */
const lazyPreview = lazy(() => import('./ArrivalPreview').then(({ ArrivalPreview }) => ArrivalPreview));

/** What has become of a file that was chosen or dropped, wherever that was. */
export function ArrivedTold({ arriving, level }: Readonly<{ arriving: Arriving; level: 2 | 3 }>) {
  const formatter = formatterFor(useTextContext());
  const heading = useRef<HTMLHeadingElement>(null);
  const told = useRef<HTMLDivElement>(null);
  const { state } = arriving;
  const { kind } = state;
  const preview = useLazy(lazyPreview, kind === 'looked');
  const isShown = kind === 'looked' && preview.kind === 'here';
  useEffect(() => {
    if (isShown) heading.current?.focus();
  }, [isShown]);
  // What came of it may stand out of sight of the button, and a second file may fare like the first.
  useEffect(() => {
    if (['told', 'notACopy', 'several'].includes(state.kind)) told.current?.focus();
  }, [state]);
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
            <p>{toldWords(state)}</p>
            {state.mode === 'beside' && <ArrivedLinks copy={state.plan.copy} />}
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
          {kind === 'looked' && state.unsaved !== null && (
            <p className={styles.wrong} role="alert">
              {unsavedWords[state.unsaved]}
            </p>
          )}
          {preview.kind === 'missing' && <PartMissing what="What would come of it" missing={preview} />}
          {preview.kind === 'here' && (
            <preview.value
              {...{ level, heading }}
              plan={state.look.plan}
              chosen={state.chosen}
              isBusy={kind === 'taking'}
              isUnsaved={kind === 'looked' && state.unsaved !== null}
              onChoose={arriving.choose}
              onTake={() => arriving.take('beside')}
              onReplace={() => arriving.take('replace')}
              onLeave={arriving.leave}
            />
          )}
        </>
      )}
    </>
  );
}
