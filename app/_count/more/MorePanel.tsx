'use client';

import Link from 'next/link';
import { Button } from '@/app/_controls/Button';
import { Fold } from '@/app/_controls/Fold';
import { Carry } from '@/app/_copies/Carry';
import { useTextContext } from '@/app/_fields/useTextContext';
import type { WakeState } from '@/app/_tab/useWakeLock';
import { formatterFor } from '@/app/_words/formatter';
import { busiestWords, hourWords, wakeWords } from '@/app/_words/stall/count/moreWords';
import { SetKeys } from '../SetKeys';
import type { ThumbSide } from '../thumbSide';
import type { Counting } from '../useCount';
import styles from './Panel.module.css';
import { TinPart } from './TinPart';
import { WordsPart } from './WordsPart';

type MorePanelProps = Readonly<{
  counting: Counting;
  side: ThumbSide;
  wake: WakeState;
  onSide: (side: ThumbSide) => void;
  /** The next tile opens what else can become of a piece. */
  onChoose: () => void;
}>;

/** A burst of visitors. */
const BURST = 10;

/** What is tapped less often. */
export function MorePanel({ counting, side, wake, onSide, onChoose }: MorePanelProps) {
  const { workspace, plan, count, tap } = counting;
  return (
    <>
      <div className={styles.keys}>
        <SetKeys counting={counting} className={styles.choice} />
        <Button onPress={onChoose}>Other price, exchange, given, damaged…</Button>
        <Button onPress={() => tap({ what: 'visitors', count: BURST })}>
          Visitors +{BURST}
          {count.visitors > 0 && ` · ${count.visitors}`}
        </Button>
        <Button onPress={() => tap({ what: 'putBack', goods: null })}>
          Put back, the price{count.putBack > 0 && ` · ${count.putBack}`}
        </Button>
        <Button onPress={() => tap({ what: 'lead', words: '' })}>
          Wants something made{count.leads.length > 0 && ` · ${count.leads.length}`}
        </Button>
      </div>
      {plan.weathers.length > 1 && (
        <fieldset className={styles.weathers}>
          <legend className={styles.legend}>Weather</legend>
          <div className={styles.keys}>
            {plan.weathers.map(({ id, name }) => (
              <button
                key={id}
                type="button"
                className={styles.choice}
                aria-pressed={count.weatherId === id}
                onClick={() => count.weatherId !== id && tap({ what: 'weather', weatherId: id })}
              >
                {name}
              </button>
            ))}
          </div>
        </fieldset>
      )}
      <WordsPart counting={counting} />
      <TinPart counting={counting} />
      <Hours counting={counting} />
      <Fold summary="This phone" line={side === 'left' ? 'left hand' : 'right hand'}>
        <div className={styles.part}>
          <Button onPress={() => onSide(side === 'left' ? 'right' : 'left')}>
            Keys for the {side === 'left' ? 'right' : 'left'} hand
          </Button>
          {wakeWords[wake] !== '' && <p>{wakeWords[wake]}</p>}
          <Carry store={workspace} what={{ kind: 'stallDay', id: plan.stallDayId, name: plan.title }} />
        </div>
      </Fold>
      <p>
        <Link href={`/stall/${encodeURIComponent(plan.stallDayId)}`}>Leave the count</Link>
      </p>
    </>
  );
}

// Helpers

function Hours({ counting: { count, locale } }: Pick<MorePanelProps, 'counting'>) {
  const formatter = formatterFor(useTextContext());
  const isOfSeveral = new Set(count.hours.map(({ day }) => day)).size > 1;
  return (
    <Fold summary="By the hour" line={busiestWords(count.hours, locale) ?? 'nothing sold yet'}>
      <table>
        <thead>
          <tr>
            <th scope="col">Hour</th>
            <th scope="col">Sold</th>
          </tr>
        </thead>
        <tbody>
          {count.hours.map(({ day, hour, pieces }) => (
            <tr key={`${day} ${hour}`}>
              <th scope="row">
                {isOfSeveral && `${formatter.day(day)}, `}
                {hourWords(hour, locale)}
              </th>
              <td>{pieces}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Fold>
  );
}
