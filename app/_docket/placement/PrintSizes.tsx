'use client';

import { Button } from '@/app/_controls/Button';
import type { PlacementProps } from '@/app/_docket/common/placementProps';
import { useJob } from '@/app/_docket/common/useJob';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { MeasureField } from '@/app/_fields/MeasureField';
import { namesInWords } from '@/app/_words/docket/jobWords';
import { mostEntries, numberLimits } from '@/shared/limits';
import { type Print, placementSchema, printSchema } from '@/shared/schemas/job';
import styles from './PrintSizes.module.css';

/** One print size for all, or another for some sizes of the blank. */
export function PrintSizes({ placement, path }: PlacementProps) {
  const { jobId, input, workspace, field, notes } = useJob();
  const { prints, name } = placement;
  const line = input.job.lines.find(({ placements }) => placements.some(({ id }) => id === placement.id));
  const sizes = input.blanks[line?.blankId ?? '']?.sizes.map((size) => size.name) ?? [];
  const named = prints.flatMap((print) => print.sizes ?? []);
  const free = sizes.filter((size) => !named.includes(size));
  const setPrints = (label: string, next: readonly Print[]) =>
    void workspace.setField({ kind: 'job', id: jobId }, label, [...path, 'prints'], next);
  const [first] = prints;
  const isFull = prints.length >= mostEntries(placementSchema, ['prints']);

  const toggle = (at: number, print: Print, size: string) => {
    const has = print.sizes?.includes(size) ?? false;
    const others = sizes.filter((other) => (other === size ? !has : (print.sizes?.includes(other) ?? false)));
    const label = `Print size of ${name} on ${size}`;
    // A group of no sizes is no group.
    if (others.length === 0) setPrints(label, prints.toSpliced(at, 1));
    else setPrints(label, prints.with(at, { ...print, sizes: others }));
  };

  return (
    <div>
      {prints.map((print, at) => {
        const place = [...path, 'prints', at];
        const whole = notes(place);
        const width = field('Width', [...place, 'widthMm'], `Width of ${name}`);
        const height = field('Height', [...place, 'heightMm'], `Height of ${name}`);
        const who = print.sizes === null ? (prints.length > 1 ? 'all other sizes' : 'all sizes') : null;
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a print size is known by its place alone
          <fieldset className={styles.print} key={at}>
            <legend className={styles.name}>Print size for {who ?? namesInWords(print.sizes ?? [])}</legend>
            <FieldGroup>
              <div className={styles.sides}>
                <MeasureField
                  {...width}
                  {...{ issue: width.issue ?? whole.issue, caution: width.caution ?? whole.caution }}
                  kind="length"
                  width="narrow"
                  needed
                  {...numberLimits(printSchema, ['widthMm'])}
                  value={print.widthMm}
                />
                <MeasureField
                  {...height}
                  kind="length"
                  width="narrow"
                  needed
                  {...numberLimits(printSchema, ['heightMm'])}
                  value={print.heightMm}
                />
              </div>
              {print.sizes !== null && (
                <div className={styles.sizes}>
                  {sizes.map((size) => (
                    <label className={styles.size} key={size}>
                      <input
                        type="checkbox"
                        checked={print.sizes?.includes(size) ?? false}
                        disabled={!print.sizes?.includes(size) && !free.includes(size)}
                        onChange={() => toggle(at, print, size)}
                      />
                      {size}
                    </label>
                  ))}
                </div>
              )}
            </FieldGroup>
          </fieldset>
        );
      })}
      <div className={styles.add}>
        {sizes.length > 1 && free.length > 0 && first !== undefined && !isFull && (
          <Button
            kind="quiet"
            onPress={() =>
              setPrints(`Another print size of ${name}`, [
                { ...first, sizes: [free.at(-1) ?? ''] },
                ...prints,
              ])
            }
          >
            Another print size for some sizes
          </Button>
        )}
        {prints.every((print) => print.sizes !== null) && first !== undefined && !isFull && (
          <Button
            kind="quiet"
            onPress={() =>
              setPrints(`Print size of ${name} for all other sizes`, [...prints, { ...first, sizes: null }])
            }
          >
            A print size for all other sizes
          </Button>
        )}
      </div>
    </div>
  );
}
