import { describe, expect, it } from 'vitest';
import { takeAttachment } from '@/app/_attachments/takeAttachment';
import { bytesOfFile } from '@/lib/stored/storedFile';

const noPause = async (): Promise<void> => undefined;
const taking = (pause = noPause) => ({ purpose: 'permission', addedOn: '2026-11-27', pause }) as const;

describe('takeAttachment', () => {
  // The hash of “abc” is in FIPS 180-4's examples (NIST).
  it('keeps any file under its SHA-256, with what the device told of it', async () => {
    const file = new File(['abc'], 'Permission.PDF', { type: 'application/PDF' });
    const taken = await takeAttachment(file, taking());
    expect(taken).toMatchObject({
      state: 'taken',
      attachment: {
        fileId: 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad',
        ...{ fileName: 'Permission.PDF', bytes: 3, mediaType: 'application/pdf' },
        ...{ purpose: 'permission', addedOn: '2026-11-27' },
      },
      file: { name: 'Permission.PDF' },
    });
    if (taken.state !== 'taken') return;
    expect(taken.file.id).toBe(taken.attachment.fileId);
    expect(await bytesOfFile(taken.file)).toEqual(new TextEncoder().encode('abc'));
  });

  it('refuses 300 MB by its size, before a byte of it is read', async () => {
    const file = new File(['x'], 'film.mp4');
    Object.defineProperty(file, 'size', { value: 300_000_000 });
    file.slice = () => {
      throw new Error('it was read');
    };
    expect(await takeAttachment(file, taking())).toEqual({
      state: 'refused',
      why: { code: 'tooLarge', bytes: 300_000_000, most: 100_000_000 },
    });
  });

  it('refuses an empty file, and one the device cannot read', async () => {
    expect(await takeAttachment(new File([], 'nothing.pdf'), taking())).toEqual({
      state: 'refused',
      why: { code: 'empty' },
    });
    const gone = new File(['x'], 'gone.pdf');
    gone.slice = () => {
      throw new DOMException('gone', 'NotFoundError');
    };
    expect(await takeAttachment(gone, taking())).toEqual({ state: 'refused', why: { code: 'notReadable' } });
  });

  it('gives the page a turn after each 128 kB, and keeps every byte in its place', async () => {
    const bytes = Uint8Array.from({ length: 2_500_000 }, (_, at) => (at * 7) % 251);
    let turns = 0;
    const taken = await takeAttachment(
      new File([bytes], 'photo.jpg'),
      taking(async () => {
        turns += 1;
      }),
    );
    // Two times 1,048,576 bytes in 8 pieces each, then 402,848 bytes in 4.
    expect(turns).toBe(8 + 8 + 4);
    if (taken.state !== 'taken') throw new Error('refused');
    expect(Buffer.from((await bytesOfFile(taken.file)) ?? []).equals(Buffer.from(bytes))).toBe(true);
  });

  it('keeps the ending of a name that is too long', async () => {
    const taken = await takeAttachment(new File(['x'], `${'a'.repeat(300)}.pdf`), taking());
    if (taken.state !== 'taken') throw new Error('refused');
    expect(taken.attachment.fileName).toHaveLength(191);
    expect(taken.attachment.fileName.endsWith('.pdf')).toBe(true);
  });
});
