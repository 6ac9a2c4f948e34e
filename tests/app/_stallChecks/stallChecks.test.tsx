// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, describe, expect, it } from 'vitest';
import { StallChecks } from '@/app/_stallChecks/StallChecks';
import { addDays } from '@/shared/days';
import { stallDaySchema } from '@/shared/schemas/stallDay';
import { club } from '@/tests/fixtures/clubJob';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

afterEach(cleanup);

const [press] = club().workshop.presses;
if (press === undefined) throw new Error('no press');
const presses = [{ ...press, powerKw: { value: 1.4, unit: 'kW', date: TEST_DAY, origin: 'yours' } as const }];

const show = (fields: Readonly<Record<string, unknown>>) =>
  render(
    <StallChecks
      id="fair"
      workshop={{ presses }}
      stallDay={stallDaySchema.parse({
        name: 'Spring fair',
        days: [{ id: 'sat', day: addDays(TEST_DAY, 20), fromMinute: 600, toMinute: 1020 }],
        ...fields,
      })}
    />,
  );

describe('what the check says of a stall day', () => {
  it('is nothing where all is settled', () => {
    const { container } = show({ permit: { state: 'have' }, insurance: { state: 'notNeeded' } });
    expect(container).toBeEmptyDOMElement();
  });

  it('is the power that falls short, then permit and insurance', () => {
    show({ power: { source: 'battery', pressIds: [press.id], guaranteedWatts: 600 } });
    expect(screen.getAllByRole('listitem').map(({ textContent }) => textContent)).toEqual([
      expect.stringMatching(
        /^The battery gives 600 W without a break, and pressing takes [\d,.]*1.?400 W\.Stop · /,
      ),
      expect.stringMatching(
        /^Whether you need a permit to sell and liability insurance there is not settled\.Caution · .*Ask your local authority and the organiser\.$/,
      ),
    ]);
  });
});
