'use client';

import { useContext, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { RevealContext } from '@/app/_controls/reveal';
import { fieldId } from '@/app/_docket/common/fieldId';
import { useJob } from '@/app/_docket/common/useJob';
import { TextField } from '@/app/_fields/TextField';
import { rateGroupWords } from '@/app/_words/rateGroupWords';
import { type RateName, rateDefinition, rateNames } from '@/shared/tables/rateCatalogue';
import { JobRate } from './JobRate';
import styles from './JobRates.module.css';

/**
 * Rates that this job sets for itself; all others follow the workshop. What nobody has told and what the job says itself
 * stand first; the rest comes when asked for, sought, or led to.
 */
export function JobRates() {
  const { jobId, input, workspace } = useJob();
  const reveal = useContext(RevealContext);
  const [sought, setSought] = useState('');
  const [isWhole, setWhole] = useState(false);
  const { job, workshop } = input;
  const isOpen = (name: RateName) =>
    workshop.rates[name]?.origin === 'typical' || job.rates[name] !== undefined;
  // Those that stood open when the fold was opened: a rate that is told keeps its place under the maker's hands.
  const [first] = useState(() => rateNames.filter(isOpen));
  const own = rateNames.filter((name) => job.rates[name] !== undefined);
  const word = sought.trim().toLowerCase();
  const shown = rateNames.filter((name) =>
    word !== ''
      ? rateDefinition(name).label.toLowerCase().includes(word)
      : isWhole || first.includes(name) || isOpen(name) || reveal.id === fieldId(['rates', name]),
  );
  const groups = Object.entries(rateGroupWords).flatMap(([group, heading]) => {
    const names = shown.filter((name) => rateDefinition(name).group === group);
    return names.length === 0 ? [] : [{ group, heading, names }];
  });
  return (
    <section className={styles.part} aria-labelledby="job-rates-heading">
      <h3 className="visuallyHidden" id="job-rates-heading">
        Rates for this job
      </h3>
      <p className={styles.line}>
        {own.length === 0
          ? 'All follow the workshop. What is typed here counts in this job alone.'
          : `Set for this job alone: ${own.map((name) => rateDefinition(name).label).join(', ')}.`}
      </p>
      <TextField label="Find a rate" value={sought} onCommit={setSought} />
      {groups.map(({ group, heading, names }) => (
        <div className={styles.group} key={group}>
          <h4 className={styles.heading}>{heading}</h4>
          <div className={styles.rates}>
            {names.map((name) => (
              <JobRate
                key={name}
                name={name}
                workshop={workshop.rates[name]}
                own={job.rates[name] ?? null}
                onSet={(rate) =>
                  workspace.setField(
                    { kind: 'job', id: jobId },
                    `${rateDefinition(name).label} for this job`,
                    ['rates', name],
                    rate ?? undefined,
                  )
                }
              />
            ))}
          </div>
        </div>
      ))}
      {groups.length === 0 && word !== '' && <p className={styles.line}>No rate goes by that name.</p>}
      {word === '' && shown.length < rateNames.length && (
        <Button kind="quiet" onPress={() => setWhole(true)}>
          All {rateNames.length} rates
        </Button>
      )}
    </section>
  );
}
