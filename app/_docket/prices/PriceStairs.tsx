'use client';

import { useRef } from 'react';
import { useLetterPx } from '@/app/_charts/useLetterPx';
import { useNear } from '@/app/_charts/useNear';
import { lazy } from '@/app/_network/lazy';
import { PartMissing } from '@/app/_network/PartMissing';
import { useLazy } from '@/app/_network/useLazy';
import { useWidth } from '@/app/_ruler/useWidth';
import { listMoney, type PriceVoice } from '@/app/_words/docket/pricesWords';
import { formatterFor } from '@/app/_words/formatter';
import type { AskedAgainstList } from '@/lib/price/list/askedAgainstList';
import type { Staircase } from '@/lib/studies/breaks/staircase';
import { fromMinor } from '@/shared/money';
import styles from './PriceStairs.module.css';

const lazyStairChart = lazy(() => import('@/app/_charts/StairChart').then(({ StairChart }) => StairChart));

type PriceStairsProps = Readonly<{
  stairs: Staircase;
  asked: AskedAgainstList | null;
  /** Whether the prices are the maker's own. */
  isOwn: boolean;
  hasTaxInside: boolean;
  targetMargin: number;
  voice: PriceVoice;
}>;

/** Heights as the frame has them before the drawing comes. */
const HIGH = 16;
/** Of amounts held level so many are written. */
const MOST_LABELS = 4;

/** Order total against quantity: the list over what each order must bring. */
export function PriceStairs({ stairs, asked, isOwn, hasTaxInside, targetMargin, voice }: PriceStairsProps) {
  const frame = useRef<HTMLDivElement>(null);
  // Much code that holds a phone up for a third of a second, and nobody sees before scrolling there.
  const chart = useLazy(lazyStairChart, useNear(frame));
  const widthPx = useWidth(frame, 560);
  const letterPx = useLetterPx();
  const { context, currency, piece } = voice;
  const formatter = formatterFor(context);
  const units = (minor: Parameters<typeof fromMinor>[0]) => fromMinor(minor, currency);
  const { falls, held } = stairs;
  const isTrouble = falls.length > 0;
  const own = asked === null ? null : (asked.asked ?? asked.listEach);
  const entries = [
    { kind: 'list', name: isOwn ? 'your prices' : 'this list' },
    ...(held.length > 0 ? [{ kind: 'held', name: 'held level by the rule' }] : []),
    ...(isTrouble ? [{ kind: 'fall', name: 'costs more than the next break' }] : []),
    {
      kind: 'need',
      name: isTrouble ? `target ${formatter.share(targetMargin)}` : 'what the order must bring',
    },
    ...(isTrouble ? [{ kind: 'cost', name: 'full cost' }] : []),
  ] as const;
  return (
    <figure className={styles.whole}>
      <figcaption className="visuallyHidden">
        What orders of 1 to {stairs.points.length} {piece.many} pay by the list, over what each must bring.{' '}
        {isTrouble
          ? falls
              .map(
                ({ from, to, cheaperAt }) =>
                  `${from === to ? from : `${from} to ${to}`} cost more than ${cheaperAt}.`,
              )
              .join(' ')
          : 'No order pays more than a larger one.'}
      </figcaption>
      <div className={styles.frame} ref={frame}>
        {chart.kind === 'missing' && (
          <PartMissing what="The drawing" meanwhile="Its prices stand above." missing={chart} />
        )}
        <div aria-hidden="true" className={styles.chart}>
          {chart.kind === 'here' && (
            <chart.value
              stairs={{
                points: stairs.points.map(({ n, pays, target, fullCost }) => ({
                  n,
                  pays: pays === null ? null : units(pays),
                  need: target,
                  fullCost,
                })),
                held: held.map(({ from, to, pays }, at) => ({
                  from,
                  to,
                  pays: units(pays),
                  words: at >= held.length - MOST_LABELS ? formatter.number(units(pays), 2) : '',
                })),
                falls: falls.map(({ from, cheaperAt, lost }) => ({
                  from,
                  cheaperAt,
                  words: `−${listMoney(lost, voice)}`,
                })),
                job:
                  asked === null || own === null || asked.n > stairs.points.length
                    ? null
                    : {
                        n: asked.n,
                        total: units(own) * asked.n,
                        words: `this job at ${listMoney(own, voice)}`,
                      },
              }}
              {...{ widthPx, letterPx }}
              heightPx={letterPx * HIGH}
              upTitle={`order total${hasTaxInside ? ' with tax' : ''}, ${currency}`}
              acrossTitle={`${piece.many} in the order`}
              tick={(value) => formatter.number(value, 2)}
            />
          )}
        </div>
      </div>
      <ul className={styles.legend}>
        {entries.map(({ kind, name }) => (
          <li className={styles.entry} key={kind}>
            <svg className={styles.swatch} viewBox="0 0 28 12" aria-hidden="true" focusable="false">
              {kind === 'fall' ? (
                <path className={styles.fall} d="M2 11L10 1M9 11L17 1M16 11L24 1" />
              ) : (
                <path className={styles[kind]} d="M0 6h28" />
              )}
            </svg>
            {name}
          </li>
        ))}
      </ul>
    </figure>
  );
}
