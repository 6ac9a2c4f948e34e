'use client';

import { Advice } from '@/app/_controls/Advice';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { CheckField } from '@/app/_fields/CheckField';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import type { WorkshopFields } from './workshopFields';

const answers = [
  { value: 'yes', label: 'Yes, air goes out while I press' },
  { value: 'no', label: 'No' },
] as const;

/** The room: heat and fumes. */
export function RoomSection({ fields: { workshop, set } }: Readonly<{ fields: WorkshopFields }>) {
  const { ventilated, foodOvenUsed } = workshop.room;
  return (
    <>
      <FieldGroup>
        <ChoiceField
          label="Is the room aired while you press?"
          id={workshopFieldId(['room', 'ventilated'])}
          value={ventilated === null ? null : ventilated ? 'yes' : 'no'}
          unchosen="Not yet said"
          choices={answers}
          onCommit={(answer) => set('Ventilation', ['room', 'ventilated'], answer === 'yes')}
        />
      </FieldGroup>
      <CheckField
        label="An oven that also cooks food is used for goods"
        id={workshopFieldId(['room', 'foodOvenUsed'])}
        checked={foodOvenUsed}
        onCommit={(used) => set('Food oven', ['room', 'foodOvenUsed'], used)}
      />
      <Advice severity="caution">
        Hot dye and coatings give off fumes, and a platen at pressing heat burns at a touch. Air the room,
        keep children and pets out of it, stay beside a hot press, and never use an oven that cooks food.
      </Advice>
    </>
  );
}
