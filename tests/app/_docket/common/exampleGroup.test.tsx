// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen, within } from '@testing-library/react';
import { afterEach, describe, expect, it } from 'vitest';
import { exampleGroup } from '@/app/_docket/common/exampleGroup';
import { ChoiceField } from '@/app/_fields/ChoiceField';

afterEach(cleanup);

describe('blanks to choose from', () => {
  const list = (jobId: string) => {
    const blanks = { 'white-mug': 'Example mug', mine: 'My mug', 'white-shirt': 'Example shirt' };
    const choices = Object.entries(blanks).map(([value, label]) => ({
      value,
      label,
      group: exampleGroup(jobId, value),
    }));
    render(<ChoiceField label="Blank" value="mine" choices={choices} onCommit={() => undefined} />);
    return within(screen.getByRole('combobox', { name: 'Blank' }));
  };
  const labels = (of: Pick<typeof screen, 'getAllByRole'>) =>
    of.getAllByRole('option').map(({ textContent }) => textContent);

  it('are on a job of one’s own one’s own first, and those of the examples in a group', () => {
    const shown = list('job-of-mine');
    expect(labels(shown)).toEqual(['My mug', 'Example mug', 'Example shirt']);
    expect(labels(within(shown.getByRole('group', { name: 'From the examples' })))).toEqual([
      'Example mug',
      'Example shirt',
    ]);
  });

  it('are in one list on an example', () => {
    const shown = list('fair-mugs');
    expect(labels(shown)).toEqual(['Example mug', 'My mug', 'Example shirt']);
    expect(shown.queryByRole('group')).toBeNull();
  });
});
