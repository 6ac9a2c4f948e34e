import { render, screen } from '@testing-library/react';
import { Docket } from '@/app/_docket/Docket';
import { MakerMeasures, type Measures } from '@/app/_fields/makerMeasures';
import { NumberLocale } from '@/app/_fields/numberLocale';

const measures: Measures = {
  units: { length: 'in', temperature: 'F', pressure: 'psi', volume: 'mL', distance: 'mi' },
  currency: 'USD',
};

/** Lays one of the example jobs on the bench and waits for its first answer. */
export async function layOut(jobId = 'club-order'): Promise<void> {
  render(
    <NumberLocale value="en-US">
      <MakerMeasures value={measures}>
        <Docket jobId={jobId} />
      </MakerMeasures>
    </NumberLocale>,
  );
  await screen.findByRole('heading', { name: 'Checks' });
}
