// @vitest-environment node
import { describe, expect, it, vi } from 'vitest';
import type { PreviewAnswer, PreviewQuestion } from '@/app/_artwork/previewOf';
import { previewOf } from '@/app/_artwork/previewOf';
import { createPreviews } from '@/app/_artwork/previews';
import type { AskedWorker } from '@/app/_workers/askWorker';
import { aPicture } from '@/tests/fixtures/aPicture';

const bitmap = () => ({ width: 8, height: 10, close: vi.fn() }) as unknown as ImageBitmap;
const picture = aPicture({ fileId: 'f1' });
const kept = { id: 'f1', name: 'a.png', content: new Blob([new Uint8Array([1, 2])]) };

/** Previews over a worker that answers at once, with how often it and the page were asked. */
function previews(answer: PreviewAnswer | 'lost', drawn = bitmap()) {
  const asked: PreviewQuestion[] = [];
  const ask: AskedWorker<PreviewQuestion, PreviewAnswer>['ask'] = (_, question, listener) => {
    asked.push(question);
    listener(
      answer === 'lost'
        ? { kind: 'missing', failure: { kind: 'failed', why: 'gone', again: null } }
        : { kind: 'answered', answer, isLast: true },
    );
  };
  const draw = vi.fn(async () => drawn);
  const readFile = vi.fn(async () => kept as typeof kept | null);
  return { made: createPreviews({ ask }, draw), asked, draw, readFile };
}

describe('small pictures of kept files', () => {
  it('are unpacked by the worker once, however many show them', async () => {
    const shown = bitmap();
    const { made, asked, readFile } = previews({ kind: 'shown', bitmap: shown });
    const all = await Promise.all([made.of(picture, readFile), made.of(picture, readFile)]);
    expect(all).toEqual([shown, shown]);
    expect(await made.of(picture, readFile)).toBe(shown);
    expect(asked).toHaveLength(1);
    expect(shown.close).not.toHaveBeenCalled();
  });

  it('are not unpacked again where the picture was read a moment ago', async () => {
    const { made, asked, readFile } = previews({ kind: 'none' });
    const fresh = bitmap();
    made.give('f1', fresh);
    expect(await made.of(picture, readFile)).toBe(fresh);
    expect(readFile).not.toHaveBeenCalled();
    expect(asked).toHaveLength(0);
  });

  it('of drawings are drawn on the page, once, from what the worker found harmless', async () => {
    const { made, draw, readFile } = previews({ kind: 'draw', svg: '<svg/>', size: { width: 4, height: 5 } });
    await Promise.all([made.of(picture, readFile), made.of(picture, readFile)]);
    expect(draw.mock.calls).toEqual([['<svg/>', { width: 4, height: 5 }]]);
  });

  it('are looked for again where the file was not there, for it may be chosen again', async () => {
    const { made, readFile } = previews({ kind: 'shown', bitmap: bitmap() });
    readFile.mockResolvedValueOnce(null);
    expect(await made.of(picture, readFile)).toBeNull();
    expect(await made.of(picture, readFile)).not.toBeNull();
  });

  it('are made on the page where the worker cannot be had', async () => {
    const { made, draw, readFile } = previews('lost');
    const svg = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><path d="M0 0h9v9z"/></svg>';
    readFile.mockResolvedValue({ ...kept, content: new Blob([svg]) });
    expect(await made.of(picture, readFile)).not.toBeNull();
    expect(draw).toHaveBeenCalledTimes(1);
  });
});

describe('previewOf', () => {
  it('gives a drawing at most 800 px long, in the shape it was read at', async () => {
    const file = new Blob([
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 2 1"><path d="M0 0h1v1z"/></svg>',
    ]);
    const answer = await previewOf({ file, size: { width: 4000, height: 2000 } });
    expect(answer).toMatchObject({ kind: 'draw', size: { width: 800, height: 400 } });
  });

  it('draws nothing out of a copy brought back with a file that is no picture', async () => {
    const file = new Blob(['<svg xmlns="http://www.w3.org/2000/svg"><script>1</script></svg>']);
    expect(await previewOf({ file, size: { width: 9, height: 9 } })).toEqual({ kind: 'none' });
  });

  it('draws nothing where the browser can no longer read the file it kept', async () => {
    const file = new Blob(['gone']);
    vi.spyOn(file, 'arrayBuffer').mockRejectedValue(new DOMException('gone', 'NotReadableError'));
    expect(await previewOf({ file, size: { width: 9, height: 9 } })).toEqual({ kind: 'none' });
  });
});
