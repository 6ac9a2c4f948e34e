'use client';

import { fieldId } from '@/app/_docket/common/fieldId';
import { useJob } from '@/app/_docket/common/useJob';
import { QuantityField } from '@/app/_fields/QuantityField';
import { QuantityRow } from '@/app/_fields/QuantityRow';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { numberLimits } from '@/shared/limits';
import { type Job, type Line, lineSchema } from '@/shared/schemas/job';
import { wantedPieces } from '@/shared/wantedPieces';
import styles from './LineSizes.module.css';

/** How many of each size, with their sum. */
export function LineSizes({ line, index }: Readonly<{ line: Line; index: number }>) {
  const { jobId, input, workspace, notes } = useJob();
  const formatter = formatterFor(useTextContext());
  const order = input.blanks[line.blankId]?.sizes.map(({ name }) => name) ?? [];
  const unknown = line.quantities.map(({ size }) => size).filter((size) => !order.includes(size));
  const sizes = [...new Set([...order, ...unknown])];
  const set = (size: string, quantity: number | null) =>
    workspace.changeJob(
      jobId,
      `Pieces in ${size}`,
      (job) => withQuantity(job, line.id, size, quantity, sizes),
      `pieces of ${line.id} in ${size}`,
    );
  const whole = notes(['lines', index, 'quantities']);
  return (
    <div className={styles.sizes}>
      <QuantityRow label={`Pieces of ${line.name}`} total={formatter.number(wantedPieces([line]))}>
        {sizes.map((size, place) => {
          const at = line.quantities.findIndex((entry) => entry.size === size);
          const path = ['lines', index, 'quantities', at < 0 ? `new${place}` : at];
          const own = notes([...path, 'quantity']);
          const entry = notes(path);
          return (
            <QuantityField
              key={size}
              id={fieldId([...path, 'quantity'])}
              label={size}
              value={line.quantities[at]?.quantity ?? null}
              {...numberLimits(lineSchema, ['quantities', 0, 'quantity'])}
              issue={own.issue ?? entry.issue}
              caution={own.caution ?? entry.caution}
              onCommit={(quantity) => set(size, quantity)}
            />
          );
        })}
      </QuantityRow>
      {sizes.length === 0 && <p className={styles.none}>Choose a blank to see its sizes.</p>}
      <p className={styles.issue} aria-live="polite">
        {whole.issue ?? whole.caution}
      </p>
    </div>
  );
}

// Helpers

/** An emptied box is a size nobody asked for: it goes from the list, which stays in the order of the blank. */
function withQuantity(
  job: Job,
  lineId: string,
  size: string,
  quantity: number | null,
  order: readonly string[],
): Job {
  const lines = job.lines.map((line) => {
    if (line.id !== lineId) return line;
    const others = line.quantities.filter((entry) => entry.size !== size);
    const quantities = quantity === null ? others : [...others, { size, quantity }];
    return {
      ...line,
      quantities: quantities.toSorted((one, other) => order.indexOf(one.size) - order.indexOf(other.size)),
    };
  });
  return { ...job, lines };
}
