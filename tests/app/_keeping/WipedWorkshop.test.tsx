// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { WipedWorkshop } from '@/app/_keeping/WipedWorkshop';

afterEach(cleanup);

describe('WipedWorkshop', () => {
  it('says what has most likely happened and when it was last there, with the copy before beginning again', async () => {
    const onBeginAgain = vi.fn(async () => undefined);
    const since = new Date(2026, 10, 24, 12).getTime();
    render(
      <WipedWorkshop since={since} onBeginAgain={onBeginAgain}>
        <button type="button">Bring a copy back</button>
      </WipedWorkshop>,
    );
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('What was kept here is gone');
    expect(screen.getByText(/most likely when space ran out or site data was deleted/)).toHaveTextContent(
      /It was last seen here on Nov 24, 2026\.$/,
    );
    expect(screen.getAllByRole('button').map(({ textContent }) => textContent)).toEqual([
      'Bring a copy back',
      'Begin again with the example',
    ]);
    await userEvent.click(screen.getByRole('button', { name: 'Begin again with the example' }));
    expect(onBeginAgain).toHaveBeenCalledTimes(1);
  });
});
