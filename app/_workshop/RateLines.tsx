'use client';

import { type RateGroup, rateDefinition, rateNames } from '@/shared/tables/rateCatalogue';
import { RateLine } from './RateLine';
import type { WorkshopDesk } from './workshopForm';

type RateLinesProps = Readonly<{ desk: WorkshopDesk; groups: readonly RateGroup[] }>;

/** The rates of some groups of the catalogue, in its order. */
export function RateLines({ desk, groups }: RateLinesProps) {
  return (
    <div>
      {rateNames
        .filter((name) => groups.includes(rateDefinition(name).group))
        .map((name) => (
          <RateLine key={name} desk={desk} name={name} />
        ))}
    </div>
  );
}
