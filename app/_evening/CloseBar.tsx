'use client';

import { useMemo, useState } from 'react';
import { wallAt } from '@/app/_clock/wallAt';
import { Advice } from '@/app/_controls/Advice';
import { Button } from '@/app/_controls/Button';
import { paperNumberText } from '@/app/_words/paperNumberText';
import { tapsSinceWords } from '@/app/_words/stall/closedWords';
import { closingBlocked } from '@/app/_words/stall/evening/eveningWords';
import {
  closedOnWords,
  closedTwiceWords,
  correctionWords,
  notClosedWords,
} from '@/app/_words/stall/evening/resultWords';
import { notIssuedWords } from '@/app/_words/store/notIssuedWords';
import { saveFailureWords } from '@/app/_words/store/saveFailureWords';
import { isBookedTwice } from '@/lib/stall/evening/closeMoves';
import { AfterClose } from './AfterClose';
import { closeDay, closeStockOf } from './closeDay';
import styles from './Evening.module.css';
import type { EveningOnScreen } from './eveningOnScreen';

type Closing =
  | { readonly kind: 'none' | 'closing' }
  /** In words of the screen. */
  | { readonly kind: 'notClosed'; readonly why: string };

/** Closes the day once nothing is left to settle; closed again it is a correction. Below stands what it leads to. */
export function CloseBar({ on }: Readonly<{ on: EveningOnScreen }>) {
  const [state, setState] = useState<Closing>({ kind: 'none' });
  const { evening, close } = on;
  const blocked = evening.unsettled.length > 0 ? closingBlocked(evening) : undefined;
  const closeNow = async () => {
    setState({ kind: 'closing' });
    try {
      const outcome = await closeDay(on);
      const isClosed = outcome.state === 'issued';
      setState(isClosed ? { kind: 'none' } : { kind: 'notClosed', why: saveFailureWords[outcome.why] });
    } catch (error) {
      setState({ kind: 'notClosed', why: notIssuedWords(error) });
    }
  };
  const paper = on.workspace.papers.dayClose.find(({ id }) => id === close?.id);
  const { stallDayId } = evening.plan;
  const { entries, papers, piles } = on.workspace;
  // A key of the evening changes neither stock nor closes.
  const isTwice = useMemo(
    () => close !== null && isBookedTwice(close.body, closeStockOf({ entries, papers, piles }, stallDayId)),
    [close, entries, papers, piles, stallDayId],
  );
  return (
    <>
      <div className={styles.close}>
        {on.tapsSince !== 0 && <Advice severity="caution">{tapsSinceWords(on.tapsSince)}</Advice>}
        {isTwice && <Advice severity="caution">{closedTwiceWords}</Advice>}
        {paper !== undefined && (
          <p>{closedOnWords(wallAt(paper.at), paperNumberText(paper.number), on.formatter, on.locale)}</p>
        )}
        <Button
          kind={on.isAsClosed && !isTwice ? 'quiet' : 'strong'}
          blockedBy={state.kind === 'closing' ? 'It is being closed.' : blocked}
          describedBy="evening-close-told"
          onPress={() => void closeNow()}
        >
          {close === null ? 'Close the day' : 'Close it again'}
        </Button>
        <p id="evening-close-told" role="status">
          {state.kind === 'notClosed'
            ? notClosedWords(state.why)
            : (blocked ?? (close === null ? null : correctionWords))}
        </p>
      </div>
      <AfterClose on={on} />
    </>
  );
}
