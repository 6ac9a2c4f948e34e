'use client';

import { useToday } from '@/app/_clock/useToday';
import { alarmAtPress } from '@/app/_words/press/alarmWords';
import { faultNames, moveWords } from '@/app/_words/press/faultWords';
import {
  alarmHeads,
  byLuckWords,
  devicesWords,
  faultyOutsideWords,
  lookCloselyWords,
  moreThanCameWords,
  noSpareWords,
  outsideWords,
  sayWhy,
  severalBegan,
  twiceHead,
  twiceThen,
  withoutCauseWords,
} from '@/app/_words/press/pressWords';
import { isLookedAt } from '@/lib/pressing/firstBatch';
import { BASE_SCRAP, scrapAlarms } from '@/lib/pressing/scrapAlarms';
import { faultTwiceRunning, twiceRunningChance } from '@/lib/pressing/stopRule';
import { nextMove } from '@/lib/pressing/testTrail';
import type { PressFault } from '@/shared/tables/faults';
import type { PressPanel } from './PressFoot';
import styles from './Told.module.css';
import type { AtThePress } from './usePressing';

type PressToldProps = Readonly<{ pressing: AtThePress; onOpen: (panel: PressPanel) => void }>;

/** What the press has to say: stop, look, go on; and what does not add up. */
export function PressTold({ pressing, onOpen }: PressToldProps) {
  const { run, turn, stopped, step, steps, otherStandards } = pressing;
  const today = useToday();
  const lastPressed = turn.pressed.at(-1);
  const goneOn = steps.findLast(({ body }) => body.step.what === 'goneOn');
  // Whoever stopped for it and went on is not told again of the same two.
  const isDealtWith = goneOn !== undefined && lastPressed !== undefined && goneOn.at >= lastPressed.at;
  const twice = stopped === null && !isDealtWith ? faultTwiceRunning(turn.pressed) : null;
  // Told while the press that gave it is the last one.
  const alarm =
    stopped === null && twice === null
      ? scrapAlarms(turn.pressed).findLast((one) => one.at === lastPressed)
      : undefined;
  // A size that had none from the beginning is told when it is its turn.
  const spare = turn.counts
    .filter(({ size, sparesTaken }) => sparesTaken > 0 || size === pressing.judged)
    .flatMap((counts) => noSpareWords(counts) ?? []);
  const more = run.turns.flatMap((one) =>
    one.counts.flatMap(({ size, moreThanCame }) =>
      moreThanCame > 0 ? [moreThanCameWords(one.placement.name, size, moreThanCame)] : [],
    ),
  );
  return (
    <div className={styles.told}>
      {stopped !== null && (
        <div className={styles.alarm} role="alert">
          <h2 className={styles.head}>
            Stopped{stopped.fault !== null && `: ${faultNames[stopped.fault].toLowerCase()}`}
          </h2>
          <p>
            <Move fault={stopped.fault} />
          </p>
          <button
            type="button"
            className={styles.strong}
            onClick={() => step('Go on at the press', { what: 'goneOn', note: '' }, today)}
          >
            Go on
          </button>
        </div>
      )}
      {twice !== null && lastPressed !== undefined && (
        <div className={styles.alarm} role="alert">
          <h2 className={styles.head}>{twiceHead(twice)}</h2>
          <p>
            <Move fault={twice} />
          </p>
          <p>
            {byLuckWords('runs', twiceRunningChance(Math.max(turn.wanted, turn.pressed.length), BASE_SCRAP))}
          </p>
          <div className={styles.pair}>
            <button
              type="button"
              className={styles.strong}
              onClick={() => step('Stop the press', { what: 'stopped', fault: twice, note: '' }, today)}
            >
              Stop after this
            </button>
            <button
              type="button"
              className={styles.plain}
              onClick={() => pressing.noteInstead(lastPressed, 'good')}
            >
              No, it is good
            </button>
          </div>
        </div>
      )}
      {alarm !== undefined && (
        <div className={styles.alarm} role="alert">
          <h2 className={styles.head}>{alarmHeads[alarm.rule.act]}</h2>
          <p>{alarmAtPress(alarm)}</p>
        </div>
      )}
      {isLookedAt(turn.pressed.length) && stopped === null && twice === null && (
        <p className={styles.look}>{lookCloselyWords(turn.pressed.length)}</p>
      )}
      {spare.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {more.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {run.outside.length > 0 && <p>{outsideWords(run.outside.length)}</p>}
      {run.faultyOutside.length > 0 && <p>{faultyOutsideWords(run.faultyOutside.length)}</p>}
      {otherStandards > 0 && <p>{severalBegan}</p>}
      {run.devices.length > 1 && <p>{devicesWords(run.devices.length)}</p>}
      {run.withoutCause.length > 0 && !pressing.at.isAsking && (
        <p className={styles.line}>
          {withoutCauseWords(run.withoutCause.length)}
          <button type="button" className={styles.plain} onClick={() => onOpen('causes')}>
            {sayWhy}
          </button>
        </p>
      )}
    </div>
  );
}

// Helpers

function Move({ fault }: Readonly<{ fault: PressFault | null }>) {
  const move = fault === null ? null : nextMove(fault);
  return (
    <>
      {move !== null && moveWords[move]} {twiceThen}
    </>
  );
}
