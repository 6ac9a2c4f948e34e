'use client';

import Link from 'next/link';
import { useTextContext } from '@/app/_fields/useTextContext';
import type { Till } from '@/lib/price/tax/tillOf';
import { formatMinor, type MinorUnits } from '@/shared/money';
import styles from './TillPart.module.css';

type TillPartProps = Readonly<{ till: Till | null; currency: string }>;

const modes = {
  added: 'Tax is added to the prices you write.',
  inside: 'Tax is inside the prices you write.',
  none: 'No tax is charged on this way of selling.',
} as const;

/** What the buyer pays for the job as it is asked: without tax, the tax, with it, and in coins where they round. */
export function TillPart({ till, currency }: TillPartProps) {
  const { locale } = useTextContext();
  const money = (minor: MinorUnits) => `${formatMinor(minor, currency, locale)} ${currency}`;
  return (
    <section className={styles.till} aria-labelledby="till-heading">
      <h3 id="till-heading">At the till</h3>
      {till === null ? (
        <p>
          Once a price is asked, and it is said whether tax is inside, the sum the buyer pays stands here.
        </p>
      ) : (
        <>
          <dl className={styles.sums}>
            <div>
              <dt>without tax</dt>
              <dd>{money(till.total.without)}</dd>
            </div>
            <div>
              <dt>tax</dt>
              <dd>{money(till.total.tax)}</dd>
            </div>
            <div>
              <dt>the buyer pays</dt>
              <dd className={styles.total}>{money(till.total.with)}</dd>
            </div>
            {till.inCash !== null && (
              <div>
                <dt>in coins and notes</dt>
                <dd>{money(till.inCash)}</dd>
              </div>
            )}
          </dl>
          <p className={styles.words}>
            {modes[till.mode]}{' '}
            {till.mode !== 'none' &&
              (till.rounding === 'line'
                ? 'It is rounded on each line of the paper. '
                : 'It is rounded once for the whole paper. ')}
            <Link href="/workshop#prices">That is set in the workshop.</Link>
          </p>
        </>
      )}
    </section>
  );
}
