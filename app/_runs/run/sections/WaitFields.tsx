'use client';

import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { YesNoField } from '@/app/_fields/YesNoField';
import type { RunOnScreen } from '@/app/_runBook/runOnScreen';
import { runTable } from '@/app/_words/making/runs/runTable';
import { numberLimits } from '@/shared/limits';
import { runSchema } from '@/shared/schemas/making/run';

/** How long sheets dry and pieces cool, and whether printed sheets lie sealed. */
export function WaitFields({ on: { run, set } }: Readonly<{ on: RunOnScreen }>) {
  return (
    <FieldGroup>
      <NumberField
        label={runTable.dry}
        id="run-dry"
        unit="min"
        whenEmpty={runTable.dryEmpty}
        value={run.dryMinutes}
        {...numberLimits(runSchema, ['dryMinutes'])}
        onCommit={(minutes) => set(runTable.dry, ['dryMinutes'], minutes)}
      />
      <NumberField
        label={runTable.cool}
        id="run-cool"
        unit="min"
        whenEmpty={runTable.coolEmpty}
        value={run.coolMinutes}
        {...numberLimits(runSchema, ['coolMinutes'])}
        onCommit={(minutes) => set(runTable.cool, ['coolMinutes'], minutes)}
      />
      <YesNoField
        label={runTable.sealed}
        id="run-sealed"
        value={run.isStoredSealed}
        onCommit={(isSealed) => set('Sheets lie sealed', ['isStoredSealed'], isSealed)}
      />
    </FieldGroup>
  );
}
