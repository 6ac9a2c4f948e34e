'use client';

import Link from 'next/link';
import { Button } from '@/app/_controls/Button';
import { Fieldset } from '@/app/_docket/common/Fieldset';
import { Fieldsets } from '@/app/_docket/common/Fieldsets';
import { fieldId } from '@/app/_docket/common/fieldId';
import { useJob } from '@/app/_docket/common/useJob';
import styles from '@/app/_docket/placement/PlacementBody.module.css';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import { wholePieces } from '@/app/_numbers/wholePieces';
import { numberLimits, textLimits } from '@/shared/limits';
import { type Line, lineSchema } from '@/shared/schemas/job';
import { currencyDigits } from '@/shared/tables/currencies';
import { LineAudience } from './LineAudience';

const NO_PACKAGING = 'none';

/** The fields of a line that are folded away here. */
export const lineMoreFields = [
  'name',
  'packagingId',
  'orderedQuantity',
  'audience',
  'nameList',
  'upCharges',
] as const;

/** What a line has besides blank, sizes, price and placements: its name, packaging, up-charges by size. */
export function LineMore({ line, index }: Readonly<{ line: Line; index: number }>) {
  const { jobId, input, workspace, field } = useJob();
  const { packagings, currency } = input.workshop;
  const path = ['lines', index] as const;
  const packaging = packagings.find(({ id }) => id === line.packagingId);
  const sizes = line.quantities.map(({ size }) => size);
  const digits = currencyDigits(currency) ?? 2;
  const setUpCharge = (size: string, amount: number | null) =>
    workspace.changeJob(
      jobId,
      `Up-charge for ${size}`,
      (job) => ({
        ...job,
        lines: job.lines.map((other) => {
          if (other.id !== line.id) return other;
          const others = other.upCharges.filter((charge) => charge.size !== size);
          return { ...other, upCharges: amount === null ? others : [...others, { size, amount }] };
        }),
      }),
      `up-charge of ${line.id} for ${size}`,
    );
  return (
    <Fieldsets>
      <Fieldset name="The line">
        <TextField
          {...field('What it is called', [...path, 'name'], `Name of ${line.name}`)}
          value={line.name}
          needed
          {...textLimits(lineSchema, ['name'])}
        />
        <ChoiceField
          {...field('Packaging', [...path, 'packagingId'], `Packaging of ${line.name}`)}
          value={packaging?.id ?? (line.packagingId === null ? NO_PACKAGING : null)}
          choices={[
            { value: NO_PACKAGING, label: 'none' },
            ...packagings.map(({ id, name }) => ({ value: id, label: name })),
          ]}
          onCommit={(id) =>
            field(`Packaging of ${line.name}`, [...path, 'packagingId']).onCommit(
              id === NO_PACKAGING ? null : id,
            )
          }
        />
        <NumberField
          {...field(
            'Pieces the customer said in all',
            [...path, 'orderedQuantity'],
            `Pieces of ${line.name}`,
          )}
          value={line.orderedQuantity}
          {...numberLimits(lineSchema, ['orderedQuantity'])}
          {...wholePieces}
          hint="Checked against the sizes. May stay empty."
        />
        <LineAudience line={line} path={path} />
        <TextField
          {...field('Names or numbers, one to a line', [...path, 'nameList'], `Names of ${line.name}`)}
          value={line.nameList}
          rows={3}
          {...textLimits(lineSchema, ['nameList'])}
          width="full"
          hint="Where each piece bears its own. Counted against the sizes. May stay empty."
        />
      </Fieldset>
      {sizes.length > 1 && (
        <Fieldset name="Up-charge by size, on the price above">
          <div className={styles.charges}>
            {sizes.map((size, place) => {
              const charge = line.upCharges.findIndex((entry) => entry.size === size);
              return (
                <NumberField
                  key={size}
                  id={fieldId([...path, 'upCharges', charge < 0 ? `new${place}` : charge])}
                  label={size}
                  unit={currency}
                  width="full"
                  value={line.upCharges[charge]?.amount ?? null}
                  {...numberLimits(lineSchema, ['upCharges', 0, 'amount'])}
                  decimals={digits}
                  minDecimals={digits}
                  onCommit={(amount) => setUpCharge(size, amount)}
                />
              );
            })}
          </div>
        </Fieldset>
      )}
      <div className={styles.actions}>
        {input.blanks[line.blankId] !== undefined && (
          <Link className={styles.link} href={`/blanks?id=${line.blankId}`}>
            Prices and sizes of this blank
          </Link>
        )}
        {input.job.lines.length > 1 && (
          <Button
            kind="quiet"
            onPress={() =>
              workspace.changeJob(jobId, `Took out ${line.name}`, (job) => ({
                ...job,
                lines: job.lines.filter(({ id }) => id !== line.id),
              }))
            }
          >
            Take {line.name} out of the job
          </Button>
        )}
      </div>
    </Fieldsets>
  );
}
