import { CardSection } from '@/app/_controls/CardSection';
import { FindingRow } from '@/app/_controls/FindingRow';
import type { RunOnScreen } from '@/app/_runBook/runOnScreen';
import styles from '@/app/_runs/run/Run.module.css';
import { findingWords } from '@/app/_words/findings/findingWords';
import { runTable } from '@/app/_words/making/runs/runTable';

/** What the check says of the run itself: drying, cooling, blanks at home; its jobs have their own. */
export function ChecksSection({ on, numeral }: Readonly<{ on: RunOnScreen; numeral: number }>) {
  const { answer, context, formatter } = on;
  const findings = answer?.checks ?? [];
  return (
    <CardSection
      {...{ numeral }}
      id="checks"
      heading={runTable.checks}
      answer={
        findings.length === 0 ? (
          runTable.none
        ) : (
          <>
            <strong>{formatter.count(findings.length, 'thing')}</strong> to mind
          </>
        )
      }
    >
      {findings.length > 0 && (
        <ul className={styles.rows}>
          {findings.map((finding, at) => {
            const { sentence, detail } = findingWords(finding, context);
            return (
              <FindingRow
                // Two findings of one rule differ in their facts alone.
                // biome-ignore lint/suspicious/noArrayIndexKey: as said
                key={`${finding.id} ${at}`}
                {...{ sentence, detail }}
                severity={finding.severity}
              />
            );
          })}
        </ul>
      )}
    </CardSection>
  );
}
