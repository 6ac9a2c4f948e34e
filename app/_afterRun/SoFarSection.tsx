import Link from 'next/link';
import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { soFarTable, soFarWords } from '@/app/_words/afterRun/soFarWords';
import { stillToPress } from '@/lib/variances/stillToPress';
import styles from './AfterRun.module.css';
import type { AfterRunOnScreen } from './afterRunOnScreen';
import { BridgePart } from './BridgePart';

/** A run that is not closed: what is still to press; what it would come to is folded away, for it judges nothing yet. */
export function SoFarSection({ on }: Readonly<{ on: AfterRunOnScreen }>) {
  const { figures, result, standard, formatter } = on;
  const lost = (result.made ?? []).reduce((sum, { scrap }) => sum + scrap, 0);
  const far = stillToPress(standard.body, result.made);
  const { key, after } = soFarWords(far, lost, formatter);
  const { runId } = figures.facts;
  return (
    <CardSection
      numeral={1}
      id="after-so-far"
      heading={soFarTable.heading}
      answer={
        <>
          <strong>{key}</strong>
          {after}
        </>
      }
    >
      <p className={styles.later}>
        {soFarTable.judgedLater}{' '}
        {far.toPress === 0 ? (
          <a href="#after-actuals">{soFarTable.close}</a>
        ) : (
          <Link href={`/making/${encodeURIComponent(runId)}/press`}>{soFarTable.press}</Link>
        )}
      </p>
      <FoldRow
        place={`after ${runId}`}
        folds={[{ id: 'as-if', name: soFarTable.asIf, body: () => <BridgePart on={on} /> }]}
      />
    </CardSection>
  );
}
