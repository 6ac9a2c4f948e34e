'use client';

import { workshopFieldId } from '@/app/_documents/fieldAddress';
import { CheckField } from '@/app/_fields/CheckField';
import { claimNames } from '@/app/_words/choices/goodsWords';
import { claims } from '@/shared/schemas/habits';
import type { WorkshopFields } from './workshopFields';

/** Each promise, and under one that is made whether it can be proved. */
export function ClaimFields({ fields: { workshop, set } }: Readonly<{ fields: WorkshopFields }>) {
  const made = workshop.habits.claims;
  return claims.map((claim) => {
    const index = made.findIndex((other) => other.claim === claim);
    const found = made[index];
    return (
      <div
        key={claim}
        id={index < 0 ? undefined : workshopFieldId(['habits', 'claims', index])}
        tabIndex={-1}
      >
        <CheckField
          label={`It is ${claimNames[claim]}`}
          checked={found !== undefined}
          onCommit={(is) =>
            set(
              'What buyers are promised',
              ['habits', 'claims'],
              is ? [...made, { claim, proven: false }] : made.filter((other) => other.claim !== claim),
            )
          }
        />
        {found !== undefined && (
          <CheckField
            label="I can prove it"
            id={workshopFieldId(['habits', 'claims', index, 'proven'])}
            checked={found.proven}
            onCommit={(proven) =>
              set(`Proof of ${claimNames[claim]}`, ['habits', 'claims', index, 'proven'], proven)
            }
          />
        )}
      </div>
    );
  });
}
