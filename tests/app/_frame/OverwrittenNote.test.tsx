// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { OverwrittenNote } from '@/app/_frame/OverwrittenNote';
import { club } from '@/tests/fixtures/clubJob';

afterEach(cleanup);

describe('OverwrittenNote', () => {
  it('names the fields another tab had set too, and goes when it has been seen', async () => {
    const onSeen = vi.fn();
    const fields = [{ id: 'workshop', kind: 'workshop', path: ['rates', 'wage'] }] as const;
    render(<OverwrittenNote fields={fields} documents={[]} onSeen={onSeen} />);
    expect(screen.getByRole('status')).toHaveTextContent('“Your pay” (wage) of rates of the workshop');
    expect(screen.getByRole('status')).toHaveTextContent('undo brings the other back');
    await userEvent.click(screen.getByRole('button', { name: 'I have seen it' }));
    expect(onSeen).toHaveBeenCalledOnce();
  });

  it('names a job and its line by what they are called and where they stand, not by their ids', () => {
    const line = 'a7f3c2e1';
    const made = club().job;
    const job = { ...made, lines: made.lines.map((one) => ({ ...one, id: line })) };
    const documents = [
      { id: 'd1c0a5b8', kind: 'job', version: 1, revision: 1, updatedAt: 1, body: job } as const,
    ];
    const fields = [
      { id: 'd1c0a5b8', kind: 'job', path: ['lines', line, 'quantities', 'L', 'quantity'] },
      { id: 'd1c0a5b8', kind: 'job', path: ['lines', 'gone', 'name'] },
    ] as const;
    render(<OverwrittenNote fields={fields} documents={documents} onSeen={() => undefined} />);
    const said = screen.getByRole('status').textContent;
    expect(said).toMatch(
      /quantity of quantity \d of line 1 of the job “Ramblers Club shirts”; list of lines? of/,
    );
    expect(said).not.toContain('gone');
    expect(said).not.toContain(line);
    expect(said).not.toContain('d1c0a5b8');
  });

  it('is silent where nothing was overwritten', () => {
    render(<OverwrittenNote fields={[]} documents={[]} onSeen={() => undefined} />);
    expect(screen.getByRole('status')).toBeEmptyDOMElement();
  });
});
