'use client';

import { Button } from '@/app/_controls/Button';
import { Fold } from '@/app/_controls/Fold';
import { fieldId } from '@/app/_docket/common/fieldId';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { CheckField } from '@/app/_fields/CheckField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { RateField } from '@/app/_fields/RateField';
import { TextField } from '@/app/_fields/TextField';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import type { CostSheet } from '@/lib/grid/costSheet';
import type { Finding } from '@/shared/finding';
import type { OwnRow } from '@/shared/schemas/ownRow';
import type { FieldPath } from '@/shared/setIn';
import { FormulaField } from './FormulaField';
import styles from './OwnRowEditor.module.css';
import { driverChoices, ownRowWords } from './ownRowWords';
import { problemsOfRow } from './problemsOfRow';

type OwnRowEditorProps = Readonly<{
  of: 'job' | 'workshop';
  row: OwnRow;
  /** Place in the document's list. */
  index: number;
  everyRow: readonly OwnRow[];
  placements: number;
  findings: readonly Finding[];
  sheet: CostSheet | null;
  onSet: (label: string, path: FieldPath, value: unknown) => void;
  onRemove: (row: OwnRow) => void;
}>;

/** One own row: a line that says what it is and what it adds, and unfolds to be changed. */
export function OwnRowEditor(props: OwnRowEditorProps) {
  const { of, row, index, everyRow, placements, findings, sheet, onSet, onRemove } = props;
  const context = useTextContext();
  const { cost, label } = row;
  const path = (...rest: FieldPath): FieldPath => ['ownRows', index, ...rest];
  const idOf = (...rest: FieldPath) =>
    of === 'job' ? fieldId(path(...rest)) : workshopFieldId(path(...rest));
  const problems = problemsOfRow(findings, row, of, index);
  const adds = sheet?.values[row.id]?.[sheet.cases.length];
  return (
    <li>
      <Fold
        summary={label}
        line={
          <>
            {problems.length > 0 && <strong className={styles.stop}>can’t be worked out · </strong>}
            {ownRowWords(row, context)}
            {of === 'workshop' && ' · in every job'}
            {adds != null && ` · adds ${formatterFor(context).money(adds)}`}
          </>
        }
        holds={[idOf()]}
      >
        <div className={styles.fields}>
          <FieldGroup>
            <TextField
              label="Name of the row"
              id={idOf('label')}
              value={label}
              needed
              longest={80}
              onCommit={(text) => onSet(`Name of ${label}`, path('label'), text)}
            />
            {cost.kind === 'driver' && (
              <>
                <RateField
                  label="Amount"
                  id={idOf('cost', 'amount')}
                  rate={cost.amount}
                  units={['money']}
                  typical={null}
                  width="narrow"
                  whenMissing="Without an amount the job can’t be costed."
                  onCommit={(amount) => onSet(`Amount of ${label}`, path('cost', 'amount'), amount)}
                />
                <ChoiceField
                  label="Each"
                  width="narrow"
                  value={cost.driver}
                  choices={driverChoices}
                  onCommit={(driver) => onSet(`${label} each ${driver}`, path('cost', 'driver'), driver)}
                />
              </>
            )}
          </FieldGroup>
          {cost.kind === 'formula' && (
            <FormulaField
              id={idOf('cost', 'formula')}
              formula={cost.formula}
              problems={problems}
              everyRow={everyRow}
              placements={placements}
              onCommit={(formula) => onSet(`Formula of ${label}`, path('cost', 'formula'), formula)}
            />
          )}
          <CheckField
            label="Money leaves the pocket for this"
            hint="Then it counts under the out-of-pocket floor, below which you pay to work."
            checked={row.outOfPocket}
            onCommit={(checked) => onSet(`${label} out of pocket`, path('outOfPocket'), checked)}
          />
          <Button onPress={() => onRemove(row)}>Remove this row</Button>
        </div>
      </Fold>
    </li>
  );
}
