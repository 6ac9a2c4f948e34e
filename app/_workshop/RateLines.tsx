'use client';

import { type RateGroup, rateDefinition, rateNames } from '@/shared/tables/rateCatalogue';
import { RateLine } from './RateLine';
import type { WorkshopFields } from './workshopFields';

type RateLinesProps = Readonly<{ fields: WorkshopFields; groups: readonly RateGroup[] }>;

/** The rates of some groups of the catalogue, in its order. */
export function RateLines({ fields, groups }: RateLinesProps) {
  return (
    <div>
      {rateNames
        .filter((name) => groups.includes(rateDefinition(name).group))
        .map((name) => (
          <RateLine key={name} fields={fields} name={name} />
        ))}
    </div>
  );
}
