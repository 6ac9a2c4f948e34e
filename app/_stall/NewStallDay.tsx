'use client';

import { useEffect, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import sheet from '@/app/_controls/ListSheet.module.css';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { DateField } from '@/app/_fields/DateField';
import { EntryForm } from '@/app/_fields/EntryForm';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { TextField } from '@/app/_fields/TextField';
import type { StallDayRow } from '@/lib/stall/days/stallCalendar';
import { textLimits } from '@/shared/limits';
import { stallDaySchema } from '@/shared/schemas/stallDay';

export interface StallDayBegun {
  readonly name: string;
  /** YYYY-MM-DD; null where it is not known yet. */
  readonly day: string | null;
  /** Id of the stall day it is like; null for one from scratch. */
  readonly copyOf: string | null;
}

type NewStallDayProps = Readonly<{
  earlier: readonly StallDayRow[];
  onAdd: (begun: StallDayBegun) => void;
  onLeave: () => void;
}>;

const NAME = 'stall-new-name';
const SCRATCH = '';

/** A name is enough to begin with; the rest is asked by the plan. */
export function NewStallDay({ earlier, onAdd, onLeave }: NewStallDayProps) {
  const [name, setName] = useState('');
  const [day, setDay] = useState<string | null>(null);
  const [copyOf, setCopyOf] = useState(SCRATCH);
  useEffect(() => focusById(NAME), []);
  const missing = name.trim() === '' ? 'The name is missing.' : undefined;
  return (
    <EntryForm
      label="New stall day"
      className={sheet.adding}
      missing={missing}
      onEnter={() => onAdd({ name, day, copyOf: copyOf === SCRATCH ? null : copyOf })}
    >
      <FieldGroup>
        <TextField
          label="Name of the fair or market"
          id={NAME}
          value={name}
          {...textLimits(stallDaySchema, ['name'])}
          onCommit={setName}
        />
        <DateField label="Day, if known" width="narrow" value={day} onCommit={setDay} />
        {earlier.length > 0 && (
          <ChoiceField
            label="Begin with"
            value={copyOf}
            choices={[
              { value: SCRATCH, label: 'Nothing' },
              ...earlier.map(({ id, stallDay }) => ({
                value: id,
                label: `The goods and costs of ${stallDay.name}`,
              })),
            ]}
            onCommit={setCopyOf}
          />
        )}
      </FieldGroup>
      <div className={sheet.ends}>
        <Button kind="strong" type="submit" blockedBy={missing}>
          Plan it
        </Button>
        <Button kind="quiet" onPress={onLeave}>
          Leave it
        </Button>
      </div>
    </EntryForm>
  );
}
