'use client';

import { classes } from '@/app/_controls/classes';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import { swatches } from '@/shared/tables/swatches';
import styles from './Blanks.module.css';
import type { BlankFields } from './blankFields';
import { ColourDot } from './ColourDot';

const axes = [
  { key: 'L', label: 'L*, lightness', min: 0, max: 100 },
  { key: 'a', label: 'a*, green to red', min: -128, max: 127 },
  { key: 'b', label: 'b*, blue to yellow', min: -128, max: 127 },
] as const;

/** The colour of a blank: a named swatch judged by eye, or one’s own reading. */
export function ColourFields({ fields: { blank, set, fieldId } }: Readonly<{ fields: BlankFields }>) {
  const { colour } = blank;
  const label = `Colour of ${blank.name}`;
  const isSame = (swatch: typeof colour) =>
    swatch.L === colour.L && swatch.a === colour.a && swatch.b === colour.b;
  const group = fieldId('colour');
  return (
    <>
      <fieldset id={group} tabIndex={-1}>
        <legend className={styles.words}>
          Sublimation ink is see-through: the print takes on the colour beneath. Judged by eye against:
        </legend>
        <div className={styles.swatches}>
          {swatches.map((swatch) => (
            <label key={swatch.name} className={classes(styles.swatch, isSame(swatch) && styles.chosen)}>
              <input
                className={styles.radio}
                type="radio"
                name={group}
                checked={isSame(swatch)}
                onChange={() => set(label, ['colour'], swatch)}
              />
              <ColourDot colour={swatch} />
              {swatch.name}
            </label>
          ))}
        </div>
      </fieldset>
      <FieldGroup pairs>
        <TextField
          label="Its name"
          id={fieldId('colour', 'name')}
          width="narrow"
          value={colour.name}
          needed
          longest={120}
          onCommit={(name) => set(label, ['colour', 'name'], name)}
        />
        {axes.map(({ key, label: axis, min, max }) => (
          <NumberField
            key={key}
            label={axis}
            id={fieldId('colour', key)}
            width="narrow"
            value={colour[key]}
            needed
            min={min}
            max={max}
            onCommit={(value) => set(label, ['colour', key], value)}
          />
        ))}
      </FieldGroup>
    </>
  );
}
