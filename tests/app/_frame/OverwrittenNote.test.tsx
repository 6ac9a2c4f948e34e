// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { OverwrittenNote } from '@/app/_frame/OverwrittenNote';

afterEach(cleanup);

describe('OverwrittenNote', () => {
  it('names the fields another tab had set too, and goes when it has been seen', async () => {
    const onSeen = vi.fn();
    const fields = [{ id: 'workshop', kind: 'workshop', path: ['rates', 'wage'] }] as const;
    render(<OverwrittenNote fields={fields} onSeen={onSeen} />);
    expect(screen.getByRole('status')).toHaveTextContent('“Your pay” (wage) of rates of the workshop');
    expect(screen.getByRole('status')).toHaveTextContent('undo brings the other back');
    await userEvent.click(screen.getByRole('button', { name: 'I have seen it' }));
    expect(onSeen).toHaveBeenCalledOnce();
  });

  it('is silent where nothing was overwritten', () => {
    render(<OverwrittenNote fields={[]} onSeen={() => undefined} />);
    expect(screen.getByRole('status')).toBeEmptyDOMElement();
  });
});
