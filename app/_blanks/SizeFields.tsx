'use client';

import { Button } from '@/app/_controls/Button';
import { focusById } from '@/app/_controls/focusById';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { MeasureField } from '@/app/_fields/MeasureField';
import { NumberField } from '@/app/_fields/NumberField';
import { positionWords } from '@/app/_words/workshop/blankWords';
import { numberLimits } from '@/shared/limits';
import { type BlankSize, blankSizeSchema, positions } from '@/shared/schemas/blank';
import styles from './Blanks.module.css';
import type { BlankFields } from './blankFields';
import { WrapFields } from './WrapFields';

type SizeFieldsProps = Readonly<{ fields: BlankFields; size: BlankSize; index: number }>;

/** Where a new largest print starts, mm. */
const FIRST_PRINT = { widthMm: 100, heightMm: 100 };

/** One size: its width, its pack, and the largest print each place takes. */
export function SizeFields({ fields, size, index }: SizeFieldsProps) {
  const { blank, set, fieldId } = fields;
  const { name, maxPrints } = size;
  const path = ['sizes', index] as const;
  const label = `${blank.name}, ${name}`;
  const free = positions.filter((place) => !maxPrints.some(({ position }) => position === place));
  const [next] = free;
  const isRound = blank.kind === 'drinkware' || maxPrints.some(({ position }) => position === 'wrap');
  const writePrints = (prints: BlankSize['maxPrints']) =>
    set(`Largest prints, ${label}`, [...path, 'maxPrints'], prints);
  return (
    <>
      <FieldGroup pairs>
        <MeasureField
          label="Width across"
          id={fieldId(...path, 'widthMm')}
          kind="length"
          width="narrow"
          value={size.widthMm}
          {...numberLimits(blankSizeSchema, ['widthMm'])}
          onCommit={(value) => set(`Width, ${label}`, [...path, 'widthMm'], value)}
        />
        <NumberField
          label="Sold in packs of"
          id={fieldId(...path, 'packSize')}
          width="narrow"
          value={size.packSize}
          {...numberLimits(blankSizeSchema, ['packSize'])}
          onCommit={(value) => set(`Pack, ${label}`, [...path, 'packSize'], value)}
        />
      </FieldGroup>
      {isRound && <WrapFields fields={fields} size={size} index={index} />}
      <div id={fieldId(...path, 'maxPrints')} tabIndex={-1}>
        {maxPrints.map((most, at) => (
          <div key={most.position} className={styles.row} id={fieldId(...path, 'maxPrints', at)}>
            <ChoiceField
              label="Largest print at"
              width="full"
              value={most.position}
              choices={positions
                .filter((place) => place === most.position || free.includes(place))
                .map((value) => ({ value, label: positionWords[value] }))}
              onCommit={(position) =>
                writePrints(maxPrints.map((other, place) => (place === at ? { ...other, position } : other)))
              }
            />
            <MeasureField
              label="Width"
              id={fieldId(...path, 'maxPrints', at, 'widthMm')}
              width="full"
              kind="length"
              value={most.widthMm}
              needed
              {...numberLimits(blankSizeSchema, ['maxPrints', at, 'widthMm'])}
              onCommit={(value) =>
                set(`Largest print, ${label}`, [...path, 'maxPrints', at, 'widthMm'], value)
              }
            />
            <MeasureField
              label="Height"
              id={fieldId(...path, 'maxPrints', at, 'heightMm')}
              width="full"
              kind="length"
              value={most.heightMm}
              needed
              {...numberLimits(blankSizeSchema, ['maxPrints', at, 'heightMm'])}
              onCommit={(value) =>
                set(`Largest print, ${label}`, [...path, 'maxPrints', at, 'heightMm'], value)
              }
            />
            <div className={styles.act}>
              <Button
                kind="quiet"
                onPress={() => {
                  focusById(fieldId(...path, 'maxPrints'));
                  writePrints(maxPrints.filter((_, place) => place !== at));
                }}
              >
                Remove <span className="visuallyHidden">{positionWords[most.position]}</span>
              </Button>
            </div>
          </div>
        ))}
      </div>
      {next !== undefined && (
        <Button onPress={() => writePrints([...maxPrints, { position: next, ...FIRST_PRINT }])}>
          Add a place to print
        </Button>
      )}
    </>
  );
}
