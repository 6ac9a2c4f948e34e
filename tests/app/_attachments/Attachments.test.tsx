// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Attachments } from '@/app/_attachments/Attachments';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { Attachment } from '@/shared/schemas/keptFile';

const saved = vi.hoisted(() => vi.fn<(name: string, content: Blob) => void>());
vi.mock('@/app/_files/saveBlob', () => ({ saveBlob: saved }));

let clicks: { readonly mockRestore: () => void };
const opened: { type: string; target: string }[] = [];
beforeEach(() => {
  saved.mockClear();
  opened.length = 0;
  let type = '';
  URL.createObjectURL = (blob) => {
    type = blob instanceof Blob ? blob.type : '';
    return 'blob:here';
  };
  URL.revokeObjectURL = () => undefined;
  clicks = vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function clicked(
    this: HTMLAnchorElement,
  ) {
    opened.push({ type, target: this.target });
  });
});
afterEach(() => {
  cleanup();
  clicks.mockRestore();
});

const kept = (fileName: string, mediaType: string): Attachment => ({
  ...{ fileId: fileName.length.toString(16).padStart(64, '0'), fileName, bytes: 1_234_567, mediaType },
  ...{ purpose: 'sample', addedOn: '2026-11-26' },
});

/** An order's list, as far as it matters here. */
function List({ first = [] }: { readonly first?: readonly Attachment[] }) {
  const [attachments, setAttachments] = useState(first);
  const [files, setFiles] = useState<readonly StoredFile[]>([]);
  return (
    <Attachments
      attachments={attachments}
      purposes={['permission', 'sample', 'other']}
      readFile={async (id) =>
        files.find((file) => file.id === id) ??
        (first.some(({ fileId, fileName }) => fileId === id && fileName !== 'lost.png')
          ? { id, name: 'kept', content: new Blob(['<script>']) }
          : null)
      }
      onAdd={(attachment, file) => {
        setAttachments((before) => [...before, attachment]);
        setFiles((before) => [...before, file]);
        return { state: 'shown' };
      }}
      onRemove={(gone) => setAttachments(attachments.filter((one) => one !== gone))}
    />
  );
}
const choose = (...files: File[]) =>
  userEvent.upload(screen.getByLabelText('File to keep'), files, { applyAccept: false });
const press = (name: string) => userEvent.click(screen.getByRole('button', { name }));

describe('files kept with a record', () => {
  it('are added with what they are, and shown with size, purpose and day', async () => {
    render(<List first={[kept('shirt.png', 'image/png')]} />);
    expect(screen.getByText('Photo of a sample · 1.2 MB · Nov 26, 2026')).toBeVisible();
    await userEvent.selectOptions(screen.getByLabelText('What the file is'), 'other');
    await choose(new File(['abc'], 'letter.pdf', { type: 'application/pdf' }));
    expect(await screen.findByText(/^Something else · 3 bytes · /)).toBeVisible();
  });

  it('are told one by one where they cannot be taken, and the others come all the same', async () => {
    render(<List />);
    const film = new File(['x'], 'film.mp4');
    Object.defineProperty(film, 'size', { value: 300_000_000 });
    await choose(film, new File(['abc'], 'letter.pdf'), new File(['abc'], 'again.pdf'));
    expect(
      await screen.findByText(
        '“film.mp4” has 300 MB; a file here may have 100 MB. No copy could hold it. Make it smaller, or keep it elsewhere and note where.',
      ),
    ).toBeVisible();
    expect(
      await screen.findByText('“again.pdf” is here already. It was not added a second time.'),
    ).toBeVisible();
    expect(screen.getByRole('button', { name: 'Save letter.pdf' })).toBeVisible();
  });

  it('are opened where they are pictures of dots, as just that kind', async () => {
    render(<List first={[kept('shirt.png', 'image/png')]} />);
    await press('Open shirt.png');
    await waitFor(() => expect(opened).toEqual([{ type: 'image/png', target: '_blank' }]));
  });

  it.each([
    ['page.html', 'text/html'],
    ['crest.svg', 'image/svg+xml'],
    ['proof.pdf', 'application/pdf'],
    ['unknown', ''],
  ])('are saved and never opened where something in them could run: %s', async (name, type) => {
    render(<List first={[kept(name, type)]} />);
    expect(screen.queryByRole('button', { name: `Open ${name}` })).toBeNull();
    await press(`Save ${name}`);
    await waitFor(() => expect(saved).toHaveBeenCalledOnce());
    const [savedName, content] = saved.mock.calls[0] ?? [];
    expect([savedName, content?.type]).toEqual([name, 'application/octet-stream']);
    expect(opened).toEqual([]);
  });

  it('are told where the browser has lost them', async () => {
    render(<List first={[kept('lost.png', 'image/png')]} />);
    await press('Save lost.png');
    expect(await screen.findByRole('alert')).toHaveTextContent('“lost.png” is not on this device any more.');
  });

  it('go from the list when they are removed', async () => {
    render(<List first={[kept('shirt.png', 'image/png')]} />);
    await press('Remove shirt.png');
    expect(screen.queryByText('shirt.png')).toBeNull();
  });
});
