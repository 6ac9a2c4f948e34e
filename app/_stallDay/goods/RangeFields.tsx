'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { Disclosure } from '@/app/_controls/Disclosure';
import { stallFieldId } from '@/app/_documents/fieldAddress';
import { typing } from '@/app/_documents/typing';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import { TextField } from '@/app/_fields/TextField';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import type { PastDay } from '@/lib/stall/plan/demand/pastDay';
import { numberLimits, textLimits } from '@/shared/limits';
import { type StallRange, stallDaySchema } from '@/shared/schemas/stallDay';
import styles from './Goods.module.css';
import { RangeDesigns } from './RangeDesigns';
import { SizeMixFields } from './SizeMixFields';

type RangeFieldsProps = Readonly<{
  on: StallOnScreen;
  range: StallRange;
  at: number;
  past: readonly PastDay[];
}>;

/** Goods that are forecast together: how many, in which sizes, of which designs. */
export function RangeFields({ on, range, at, past }: RangeFieldsProps) {
  const { stallDay, set, change, formatter } = on;
  const { id, name, pieces, designs } = range;
  const path = ['ranges', at] as const;
  const remove = () => {
    typing.ends();
    change(`Remove ${name}`, (now) => ({ ...now, ranges: now.ranges.filter((one) => one.id !== id) }));
  };
  // For as long as it stands: the first design must not fold it shut under the hands.
  const [isNew] = useState(designs.length === 0);
  const isTyped = stallDay.forecast.from === 'typed';
  return (
    <Disclosure
      heading={name}
      line={formatter.count(designs.length, 'design')}
      id={stallFieldId(path)}
      open={isNew}
    >
      <FieldGroup>
        <TextField
          label="What they are called"
          needed
          value={name}
          {...textLimits(stallDaySchema, ['ranges', 0, 'name'])}
          onCommit={(to) => set('Name of goods', [...path, 'name'], to)}
        />
        <NumberField
          label={isTyped ? 'Asked for on the best day' : 'Share beside the other goods'}
          id={stallFieldId([...path, 'pieces'])}
          width="narrow"
          unit={isTyped ? 'pieces' : undefined}
          value={pieces}
          {...numberLimits(stallDaySchema, ['ranges', 0, 'pieces'])}
          whenEmpty="Without it there is no forecast."
          hint={
            isTyped
              ? 'Over all days, if all have the best weather.'
              : 'Any numbers: 5 here and 2 there are five of these to two of those.'
          }
          onCommit={(to) => set(`${name} asked for`, [...path, 'pieces'], to)}
        />
      </FieldGroup>
      <SizeMixFields {...{ on, range, at, past }} />
      <RangeDesigns {...{ on, range, at }} />
      <div className={styles.ends}>
        <Button kind="quiet" spoken={`Remove ${name} from the plan`} onPress={remove}>
          Remove {name} from the plan
        </Button>
      </div>
    </Disclosure>
  );
}
