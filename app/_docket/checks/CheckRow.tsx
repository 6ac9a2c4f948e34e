'use client';

import Link from 'next/link';
import { useContext, useId, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { classes } from '@/app/_controls/classes';
import { SeverityShape } from '@/app/_controls/SeverityShape';
import { fieldIdOf } from '@/app/_docket/common/fieldId';
import { useJob } from '@/app/_docket/common/useJob';
import { fieldAddress } from '@/app/_documents/fieldAddress';
import { FormerThingsContext } from '@/app/_documents/formerThings';
import type { CheckGroup } from '@/app/_words/docket/checkGroups';
import { isStanding, type Severity } from '@/shared/finding';
import styles from './CheckRow.module.css';
import { PassedStop } from './PassedStop';
import { WaiveForm } from './WaiveForm';

type CheckRowProps = Readonly<{
  group: CheckGroup;
  /** Told with the words on the button, by which undo will name it. */
  onFix: (label: string) => void;
}>;

/** One thing the checks say: a sentence and a button; why, and how a stop is passed, unfold beneath. */
export function CheckRow({ group, onFix }: CheckRowProps) {
  const { finding, words, all, lines } = group;
  const { sentence, detail, fixLabel } = words;
  const { bringBack } = useContext(FormerThingsContext);
  const back = finding.id === 'DOC-02' ? bringBack(finding.facts.kind, finding.facts.id) : null;
  const passedBecause = finding.waivedBecause;
  // A stop takes the price away: what mends it is said at once.
  const [isOpen, setOpen] = useState(isStanding(finding));
  const bodyId = useId();
  const mends = passedBecause === undefined ? fixLabel : null;
  return (
    <li className={classes(styles.row, styles[finding.severity])}>
      <SeverityShape severity={finding.severity} />
      <p className={styles.sentence}>
        <span className="visuallyHidden">{names[finding.severity]}: </span>
        {sentence}
        {lines.length > 0 && (
          <span className={styles.lines}> {new Intl.ListFormat('en').format(lines)}.</span>
        )}
      </p>
      <div className={styles.acts}>
        <button
          className={styles.why}
          type="button"
          aria-expanded={isOpen}
          aria-label={`Why: ${sentence}`}
          aria-controls={isOpen ? bodyId : undefined}
          onClick={() => setOpen(!isOpen)}
        >
          Why
        </button>
        {back !== null ? (
          <Button onPress={back.onBack}>{back.label}</Button>
        ) : mends !== null ? (
          <Button onPress={() => onFix(mends)}>{mends}</Button>
        ) : (
          <ShowPlace group={group} />
        )}
      </div>
      {isOpen && (
        <div className={styles.body} id={bodyId}>
          <p>{detail}</p>
          {(mends !== null || back !== null) && <ShowPlace group={group} />}
          {passedBecause !== undefined ? (
            <PassedStop findings={all} reason={passedBecause} />
          ) : (
            finding.waivable && <WaiveForm findings={all} />
          )}
        </div>
      )}
    </li>
  );
}

// Helpers

const names: Readonly<Record<Severity, string>> = { stop: 'Stop', caution: 'Caution', note: 'Note' };

/** The way to the field a finding speaks of, on this screen or another. */
function ShowPlace({ group: { finding, words } }: Readonly<{ group: CheckGroup }>) {
  const { input, show } = useJob();
  const fieldId = fieldIdOf(finding.where, input.job);
  const address = fieldAddress(finding.where);
  const spoken = `Show it: ${words.sentence}`;
  if (fieldId !== null && finding.where.path.length > 0)
    return (
      <Button spoken={spoken} onPress={() => show(fieldId)}>
        Show it
      </Button>
    );
  return address === null ? null : (
    <Link className={styles.link} href={address} aria-label={spoken}>
      Show it
    </Link>
  );
}
