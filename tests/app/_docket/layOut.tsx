import { render, screen } from '@testing-library/react';
import { JobScreen } from '@/app/_jobs/JobScreen';
import { type Measures, MeasuresContext } from '@/app/_numbers/measures';
import { NumberLocale } from '@/app/_numbers/numberLocale';

const measures: Measures = {
  units: { length: 'in', temperature: 'F', pressure: 'psi', volume: 'mL', distance: 'mi' },
  currency: 'USD',
};

/** Lays one of the example jobs on the bench and waits for its first answer. */
export async function layOut(jobId = 'club-order'): Promise<void> {
  render(
    <NumberLocale value="en-US">
      <MeasuresContext value={measures}>
        <JobScreen jobId={jobId} />
      </MeasuresContext>
    </NumberLocale>,
  );
  await screen.findByRole('heading', { name: 'Checks' });
}
