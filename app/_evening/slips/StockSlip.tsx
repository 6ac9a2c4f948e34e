'use client';

import { Advice } from '@/app/_controls/Advice';
import { Button } from '@/app/_controls/Button';
import { CardSection } from '@/app/_controls/CardSection';
import { Fold } from '@/app/_controls/Fold';
import { Answer } from '@/app/_docket/common/Answer';
import type { EveningOnScreen } from '@/app/_evening/eveningOnScreen';
import { PickRow } from '@/app/_fields/PickRow';
import { minorMoney } from '@/app/_words/orders/minorWords';
import { slipNames } from '@/app/_words/stall/evening/slipNames';
import {
  bookedWords,
  overdrawnWords,
  paidChoices,
  paidLabel,
  rowDiffers,
  secondsHome,
  stockAnswer,
  stockReasonWords,
  straysWords,
} from '@/app/_words/stall/evening/stockWords';
import type { EveningAnswers, StockReason } from '@/lib/stall/evening/eveningAnswers';
import { reasonsFor, type StockRow } from '@/lib/stall/evening/stockRows';
import type { StallPay } from '@/shared/schemas/stallEvents';
import { SellThrough } from './SellThrough';
import { SizesCounted } from './SizesCounted';
import styles from './Slips.module.css';

/** What is left against what should be; each difference asks for itself. */
export function StockSlip({ on }: Readonly<{ on: EveningOnScreen }>) {
  const { evening, answers, say, formatter, locale } = on;
  const { rows, overdrawn, strays, soldFrom, count } = evening;
  const { stock } = answers;
  const seconds = secondsHome(evening, formatter);
  const setStock = (more: Partial<EveningAnswers['stock']>) => say({ stock: { ...stock, ...more } });
  const open = rows.filter(({ counted }) => counted === null).length;
  const differing = rows.filter(({ difference }) => difference !== null && difference !== 0);
  const setCounted = (key: string, own: EveningAnswers['stock']['counted'][string]) =>
    setStock({ counted: { ...stock.counted, [key]: own } });
  const setReason = ({ key, counted, difference }: StockRow, reason: StockReason | null) =>
    setCounted(key, { pieces: counted, reason, reasonFor: reason === null ? null : difference });
  const setPay = ({ key, counted, difference, reason }: StockRow, pay: StallPay) =>
    setCounted(key, { pieces: counted, reason, reasonFor: difference, pay });
  return (
    <CardSection
      numeral={3}
      id="evening-stock"
      heading={slipNames.stock.heading}
      answer={<Answer words={stockAnswer(evening, formatter)} />}
    >
      <SellThrough evening={evening} formatter={formatter} />
      {seconds !== null && <p className={styles.quiet}>{seconds}</p>}
      {overdrawn
        .filter(({ counted }) => counted === null)
        .map((row) => (
          <Advice key={row.key} severity="caution">
            {overdrawnWords(evening, row)}
          </Advice>
        ))}
      {strays.length > 0 && <Advice severity="caution">{straysWords(evening, formatter)}</Advice>}
      {count.foreign.map(({ currency, pieces, minor }) => (
        <Advice key={currency} severity="note">
          {`${minorMoney(minor, currency, locale)} for ${formatter.count(pieces, 'piece')} was taken in another currency: its goods are counted, its money is in no sum here.`}
        </Advice>
      ))}
      {differing.map((row) => (
        <div className={styles.reasons} key={row.key}>
          <p aria-hidden="true">{rowDiffers(evening, row)}</p>
          <PickRow<StockReason | ''>
            label={rowDiffers(evening, row)}
            value={row.reason ?? ''}
            choices={reasonsFor(row).map((value) => ({ value, label: stockReasonWords[value] }))}
            onPick={(reason) => setReason(row, reason === '' ? null : reason)}
          />
          <Booked on={on} row={row} onPick={(pay) => setPay(row, pay)} />
        </div>
      ))}
      {soldFrom === 'taps' && (open > 0 || stock.isRestUnknown || stock.isRestAsReckoned) && (
        <div className={styles.acts}>
          {stock.isRestAsReckoned || stock.isRestUnknown ? (
            <Button kind="quiet" onPress={() => setStock({ isRestAsReckoned: false, isRestUnknown: false })}>
              {stock.isRestAsReckoned ? 'Counted as reckoned: take back' : 'Left uncounted: take back'}
            </Button>
          ) : (
            <>
              <Button onPress={() => setStock({ isRestAsReckoned: true })}>
                {open === rows.length ? 'All is as it should be' : 'All others are as they should be'}
              </Button>
              <Button kind="quiet" onPress={() => setStock({ isRestUnknown: true })}>
                Not counted
              </Button>
            </>
          )}
        </div>
      )}
      <Fold
        summary="Every size, as counted"
        line={open === 0 ? 'all counted' : `${formatter.count(open, 'size')} open`}
        isOpenAtFirst={soldFrom === 'count'}
      >
        <SizesCounted
          on={on}
          onCount={({ key }, pieces) => setCounted(key, { pieces, reason: null, reasonFor: null })}
        />
      </Fold>
    </CardSection>
  );
}

// Helpers

type BookedProps = Readonly<{ on: EveningOnScreen; row: StockRow; onPick: (pay: StallPay) => void }>;

/** Into what a sale is booked that nobody tapped, or one that was tapped twice. */
function Booked({ on: { evening, answers, locale }, row, onPick }: BookedProps) {
  const isReaderTold = answers.card.total !== null;
  const words = bookedWords(evening, row, isReaderTold, locale);
  if (words === null) return null;
  return (
    <>
      {!isReaderTold && (
        <PickRow<StallPay>
          label={paidLabel(evening, row)}
          value={row.untappedPay}
          choices={paidChoices}
          onPick={onPick}
        />
      )}
      <p className={styles.quiet}>{words}</p>
    </>
  );
}
