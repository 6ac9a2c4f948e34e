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
  const { key, after } = soFarWords(stillToPress(standard.body, result.made), lost, formatter);
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
        {soFarTable.judgedLater} <a href="#after-actuals">{soFarTable.close}</a>
      </p>
      <FoldRow
        place={`after ${figures.facts.runId}`}
        folds={[{ id: 'as-if', name: soFarTable.asIf, body: () => <BridgePart on={on} /> }]}
      />
    </CardSection>
  );
}
