'use client';

import { Button } from '@/app/_controls/Button';
import { OriginMark } from '@/app/_controls/OriginMark';
import { fieldId } from '@/app/_docket/common/fieldId';
import { RateField } from '@/app/_fields/RateField';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { numberLimits } from '@/shared/limits';
import { jobSchema } from '@/shared/schemas/job';
import type { Rate } from '@/shared/schemas/rate';
import { type RateName, type RateUnit, rateDefinition } from '@/shared/tables/rateCatalogue';
import styles from './JobRate.module.css';

type JobRateProps = Readonly<{
  name: RateName;
  workshop: Rate | null;
  /** Null while the job follows the workshop. */
  own: Rate | null;
  onSet: (rate: Rate<RateUnit> | null) => void;
}>;

/** One rate: what the workshop says, and what this job says instead. */
export function JobRate({ name, workshop, own, onSet }: JobRateProps) {
  const { label, units } = rateDefinition(name);
  const formatter = formatterFor(useTextContext());
  const id = fieldId(['rates', name]);
  // The unit the maker types this rate in comes first; a value set for the job may be in either.
  const first = workshop?.unit ?? units[0];
  const ordered: readonly [RateUnit, ...RateUnit[]] = [first, ...units.filter((unit) => unit !== first)];
  return (
    <div className={styles.rate}>
      <div className={styles.said}>
        <label htmlFor={id}>{label}</label>
        <p className={styles.workshop}>
          {workshop === null ? (
            'missing in the workshop'
          ) : (
            <>
              {formatter.rate(workshop.value, workshop.unit)}{' '}
              <OriginMark origin={workshop.origin} count={workshop.count} />
            </>
          )}
        </p>
      </div>
      <div className={styles.own}>
        <RateField
          label={`${label} for this job`}
          labelled
          id={id}
          rate={own}
          units={ordered}
          limits={numberLimits(jobSchema, ['rates', name, 'value'])}
          typical={null}
          width="narrow"
          onCommit={onSet}
        />
        {own !== null && (
          <Button kind="quiet" onPress={() => onSet(null)}>
            Follow the workshop again
          </Button>
        )}
      </div>
    </div>
  );
}
