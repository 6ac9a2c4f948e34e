'use client';

import { useRef, useState } from 'react';
import { CardSection } from '@/app/_controls/CardSection';
import { Fold } from '@/app/_controls/Fold';
import { useJob } from '@/app/_docket/common/useJob';
import { findingCountWords } from '@/app/_words/docket/findingCountWords';
import { type Finding, isStanding } from '@/shared/finding';
import styles from './ChecksSection.module.css';
import { FindingItem } from './FindingItem';

/** More notes than this are folded away. */
const NOTES_SHOWN = 4;

/** Section 2: what is wrong or worth knowing, before any sum is made. */
export function ChecksSection() {
  const { jobId, workspace, findings } = useJob();
  const state = useRef<HTMLSpanElement>(null);
  const [refused, setRefused] = useState(false);
  const passed = findings.filter(({ waivedBecause }) => waivedBecause !== undefined);
  const grave = findings.filter((finding) => isStanding(finding) || finding.severity === 'caution');
  const notes = findings.filter(({ severity }) => severity === 'note');
  const shown = [...grave, ...passed, ...notes.slice(0, NOTES_SHOWN)];
  const rest = notes.slice(NOTES_SHOWN);

  const fix = (label: string, { fix: found }: Finding) => {
    if (found === null) return;
    const outcome = workspace.applyFix(jobId, label, found.changes);
    setRefused(outcome.state === 'refused');
    // The button goes with what it mended; without this a keyboard would start again at the top of the page.
    state.current?.focus();
  };
  const item = (finding: Finding, index: number) => (
    <FindingItem key={keyOf(finding, index)} finding={finding} onFix={(label) => fix(label, finding)} />
  );
  return (
    <CardSection
      numeral={2}
      heading="Checks"
      answer={
        <span className={styles.state} tabIndex={-1} ref={state}>
          {findingCountWords(findings)}
        </span>
      }
      id="checks"
    >
      {findings.length === 0 && (
        <p>All is well: nothing was found that stops this job or needs a second look.</p>
      )}
      {refused && (
        <p className={styles.refused} role="alert">
          That button cannot be used just now: with it the job could not be kept. Change the field by hand.
        </p>
      )}
      <ul className={styles.list}>{shown.map(item)}</ul>
      {rest.length > 0 && (
        <div className={styles.rest}>
          <Fold summary={`and ${rest.length} more ${rest.length === 1 ? 'note' : 'notes'}`}>
            <ul className={styles.list}>{rest.map(item)}</ul>
          </Fold>
        </div>
      )}
    </CardSection>
  );
}

// Helpers

/** Rules tell of one place once; where not, their order keeps them apart. */
const keyOf = ({ id, variant, where }: Finding, index: number): string =>
  [id, variant, where.document, where.id, where.size, ...where.path, where.path.length === 0 && index].join(
    ' ',
  );
