'use client';

import { stallFieldId } from '@/app/_documents/fieldAddress';
import { CheckField } from '@/app/_fields/CheckField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { NumberField } from '@/app/_fields/NumberField';
import type { StallOnScreen } from '@/app/_stallDay/stallOnScreen';
import { powerChoices, powerWords } from '@/app/_words/stall/dayWords';
import { numberLimits } from '@/shared/limits';
import { stallDaySchema } from '@/shared/schemas/stallDay';

/** Which presses are used at the stall, and what gives them power. */
export function PowerFields({ on }: Readonly<{ on: StallOnScreen }>) {
  const { stallDay, workspace, set } = on;
  const { source, pressIds, guaranteedWatts } = stallDay.power;
  return (
    <>
      <div id={stallFieldId(['power'])}>
        {workspace.workshop.presses.map(({ id, name }) => (
          <CheckField
            key={id}
            label={powerWords.pressThere(name)}
            checked={pressIds.includes(id)}
            onCommit={(isUsed) =>
              set(
                powerWords.pressThere(name),
                ['power', 'pressIds'],
                isUsed ? [...pressIds, id] : pressIds.filter((one) => one !== id),
              )
            }
          />
        ))}
      </div>
      {pressIds.length > 0 && (
        <FieldGroup>
          <ChoiceField
            label="Power comes from"
            id={stallFieldId(['power', 'source'])}
            value={source}
            choices={powerChoices}
            onCommit={(to) => set('Power comes from', ['power', 'source'], to)}
          />
          <NumberField
            label="Guaranteed without a break"
            unit="W"
            id={stallFieldId(['power', 'guaranteedWatts'])}
            value={guaranteedWatts}
            {...numberLimits(stallDaySchema, ['power', 'guaranteedWatts'])}
            hint={powerWords.hint}
            onCommit={(to) => set('Guaranteed watts', ['power', 'guaranteedWatts'], to)}
          />
        </FieldGroup>
      )}
    </>
  );
}
