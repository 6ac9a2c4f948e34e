'use client';

import { Button } from '@/app/_controls/Button';
import { FindingRow } from '@/app/_controls/FindingRow';
import { formatterFor } from '@/app/_words/formatter';
import { paperNumberText } from '@/app/_words/paperNumberText';
import type { ItemStanding } from '@/app/_words/priceLists/standingWords';
import { agedWords, standingWords } from '@/app/_words/priceLists/standingWords';
import type { PriceListVersion } from '@/shared/schemas/priceList';
import type { Workshop } from '@/shared/schemas/workshop';
import styles from './PriceLists.module.css';

type VersionStandingProps = Readonly<{
  workshop: Workshop;
  version: PriceListVersion;
  /** What the next one will likely be called. */
  nextName: string;
  /** In the order of its items. */
  standings: readonly ItemStanding[];
  today: string;
  /** Shows the draft with today's prices. */
  onDraft: () => void;
}>;

/** Whether the prices that went out last still hold, and what has moved since. */
export function VersionStanding({
  workshop,
  version,
  nextName,
  standings,
  today,
  onDraft,
}: VersionStandingProps) {
  const asked = standings.some(({ kind }) => kind === 'asked');
  const told = version.items.flatMap((item, index) =>
    standingWords(item, standings[index] ?? { kind: 'asked' }, workshop),
  );
  const aged = agedWords(standings, workshop);
  const isOver = version.validUntil < today;
  return (
    <section className={styles.part} aria-labelledby="standing-heading" aria-busy={asked}>
      <h2 id="standing-heading" tabIndex={-1}>
        Does version {paperNumberText(version.number)} still hold?
      </h2>
      {asked ? (
        <p className={styles.words}>Its prices are being held against today’s rates.</p>
      ) : told.length === 0 ? (
        <p className={styles.words}>
          Every price leaves what it was made for, or what it left when it was issued.
        </p>
      ) : (
        <div className={styles.acts}>
          <p className={styles.quiet}>What went out stays as it was.</p>
          <Button onPress={onDraft}>See version {nextName} with today’s prices</Button>
        </div>
      )}
      {!asked && (
        <ul className={styles.findings}>
          {isOver && (
            <FindingRow
              severity="note"
              sentence={`It was valid until ${formatterFor(workshop).day(version.validUntil)}.`}
              detail="Who still has it may ask for its prices. Issue a new version."
            />
          )}
          {told.map(({ key, prices = [], ...words }) => (
            <FindingRow key={key} {...words}>
              {prices.length > 0 && (
                <ul className={styles.worn}>
                  {prices.map((price) => (
                    <li key={price}>{price}</li>
                  ))}
                </ul>
              )}
            </FindingRow>
          ))}
          {aged !== null && (
            <FindingRow severity={aged.severity} sentence={aged.sentence} detail={aged.detail} />
          )}
        </ul>
      )}
    </section>
  );
}
