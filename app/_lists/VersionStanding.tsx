'use client';

import type { ListVersion } from '@/shared/schemas/priceList';
import type { ReadyMaker } from '../_documents/WithWorkshop';
import { FindingRow } from '../_figures/FindingRow';
import { speakerOf } from '../_text/speaker';
import styles from './Lists.module.css';
import { agedWords, standingWords } from './standingWords';
import { useListStates } from './useListStates';

type VersionStandingProps = Readonly<{ maker: ReadyMaker; version: ListVersion; today: string }>;

/** Whether the prices that went out last still hold, and what has moved since. */
export function VersionStanding({ maker, version, today }: VersionStandingProps) {
  const { workshop } = maker;
  const standings = useListStates(maker, version);
  const asked = standings.some(({ kind }) => kind === 'asked');
  const told = version.items.flatMap((item, index) =>
    standingWords(item, standings[index] ?? { kind: 'asked' }, workshop),
  );
  const aged = agedWords(standings, workshop);
  const isOver = version.validUntil < today;
  return (
    <section className={styles.part} aria-labelledby="standing-heading" aria-busy={asked}>
      <h2 id="standing-heading">Does version {version.number} still hold?</h2>
      {asked ? (
        <p className={styles.words}>Its prices are being held against today’s rates.</p>
      ) : told.length === 0 ? (
        <p className={styles.words}>
          Every price leaves what it was made for, or what it left when it was issued.
        </p>
      ) : (
        <p className={styles.words}>
          Issue the draft below to go on with today’s prices; what went out stays as it was.
        </p>
      )}
      {!asked && (
        <ul className={styles.findings}>
          {isOver && (
            <FindingRow
              severity="note"
              sentence={`It was valid until ${speakerOf(workshop).day(version.validUntil)}.`}
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
