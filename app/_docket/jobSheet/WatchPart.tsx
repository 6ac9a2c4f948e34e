import { findingWords } from '@/app/_words/findings/findingWords';
import type { TextContext } from '@/app/_words/formatter';
import type { Finding } from '@/shared/finding';
import styles from './JobSheet.module.css';

type WatchPartProps = Readonly<{ findings: readonly Finding[]; context: TextContext }>;

/** More cautions than this are counted: the page is to stay one. */
const MOST = 5;

/** The rule for when to stop, the stops that were passed with their reasons, and what is to be watched. */
export function WatchPart({ findings, context }: WatchPartProps) {
  const passed = findings.filter(({ waivedBecause }) => waivedBecause !== undefined);
  const cautions = findings.filter(({ severity }) => severity === 'caution');
  const told = [...new Set(cautions.map((finding) => findingWords(finding, context).sentence))];
  const more = told.length - MOST;
  return (
    <div className={styles.watch}>
      <p>
        <strong>Same fault twice running: stop and find it.</strong> A print never washes off, and spares of
        one size do not help another.
      </p>
      {passed.map((finding) => (
        <p key={`${finding.id} ${finding.where.path.join(' ')} ${finding.where.placementId ?? ''}`}>
          <strong>Passed by you:</strong> {findingWords(finding, context).sentence} Reason: “
          <bdi>{finding.waivedBecause}</bdi>”
        </p>
      ))}
      {told.length > 0 && (
        <p>
          <strong>Watch:</strong> {told.slice(0, MOST).join(' ')}
          {more > 0 &&
            ` ${more === 1 ? 'One more caution stands' : `${more} more cautions stand`} on the docket.`}
        </p>
      )}
      {passed.length === 0 && told.length === 0 && <p>Every check is passed; nothing is to be watched.</p>}
    </div>
  );
}
