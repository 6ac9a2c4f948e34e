import { bitmapPicture } from '@/app/_artwork/bitmapPicture';
import type { PictureDecoder } from '@/app/_artwork/decodedPicture';
import { isReadDeep } from '@/app/_artwork/readDeepPng';
import { DamagedPicture, type EmbeddedPicture, type Zip } from '@/lib/embedding/embeddedPicture';
import { embedJpeg } from '@/lib/embedding/embedJpeg';
import { embedPixels } from '@/lib/embedding/embedPixels';
import { embedPng } from '@/lib/embedding/embedPng';
import type { SheetsToPrint } from '@/lib/exports/sheetsToPrint';
import { picturesOn, writeSheets } from '@/lib/exports/writeSheets';
import type { ForeignType } from '@/lib/lettering/foreignType';
import { inspectPicture } from '@/lib/picture/inspectPicture';
import type { RasterHeader, VectorHeader } from '@/lib/picture/pictureHeader';
import { refuseBytes } from '@/lib/picture/readHeader';
import { svgAtSize } from '@/lib/picture/svg/svgAtSize';
import { svgText } from '@/lib/picture/svg/svgText';
import { vectorPixels } from '@/lib/picture/svg/vectorPixels';
import { blobSink } from './blobSink';
import type { TransferQuestion, TransferReply } from './messages';

interface TransferTools {
  readonly decoder: PictureDecoder;
  readonly zip: Zip;
  /** The device's own letters; null where it draws none. */
  readonly type: ForeignType | null;
  readonly post: (reply: TransferReply) => void;
}

type Answer = Exclude<TransferQuestion, { kind: 'write' }>;

/**
 * Writes one file of transfers; the worker is only its wiring. Pictures are asked for one at a time, so that no more
 * than one is in memory.
 */
export function transferHandler({
  decoder,
  zip,
  type,
  post,
}: TransferTools): (question: TransferQuestion) => Promise<void> {
  let hear: ((answer: Answer) => void) | null = null;

  return async (question) => {
    if (question.kind !== 'write') {
      const waiting = hear;
      hear = null;
      waiting?.(question);
      return;
    }
    await write(question.job).catch((error: unknown) =>
      post({ kind: 'failed', why: error instanceof Error ? error.message : String(error) }),
    );
  };

  async function write(job: SheetsToPrint): Promise<void> {
    const sink = blobSink('application/pdf');
    const count = picturesOn(job).length;
    let told = 0;
    const written = await writeSheets(job, {
      zip,
      type,
      sink: sink.take,
      pictureOf: (key) => pictureOf(key, job),
      goOn(picture, share) {
        const whole = Math.floor(((picture + share) / count) * 100);
        if (whole > told) post({ kind: 'progress', share: whole / 100 });
        told = Math.max(told, whole);
      },
    });
    post({ kind: 'written', file: sink.file(), ...written });
  }

  function ask(reply: TransferReply): Promise<Answer> {
    return new Promise((resolve) => {
      hear = resolve;
      post(reply);
    });
  }

  async function pictureOf(key: string, job: SheetsToPrint): Promise<EmbeddedPicture | null> {
    const answer = await ask({ kind: 'fileWanted', key });
    if (answer.kind !== 'file' || answer.file === null || refuseBytes(answer.file.size) !== null) return null;
    const bytes = new Uint8Array(await answer.file.arrayBuffer());
    const header = inspectPicture(bytes);
    if (!header.ok) return null;
    if (header.value.kind === 'vector') return drawing(svgText(bytes), header.value, widthOf(key, job));
    return (await asItCame(bytes, header.value)) ?? (await decoded(bytes, header.value));
  }

  function asItCame(
    bytes: Uint8Array<ArrayBuffer>,
    header: RasterHeader,
  ): Promise<EmbeddedPicture | null> | EmbeddedPicture | null {
    switch (header.format) {
      case 'jpeg':
        return embedJpeg(bytes, header, zip);
      case 'png':
        return embedPng(bytes, header, zip);
      default:
        return null;
    }
  }

  /** What a page has no words for, by the browser's decoder, which turns its colours into sRGB. */
  async function decoded(
    bytes: Uint8Array<ArrayBuffer>,
    header: RasterHeader,
  ): Promise<EmbeddedPicture | null> {
    const picture = await decoder.decode(bytes, header);
    if (!picture.ok) return null;
    const { source, close } = picture.value;
    const embedded = embedPixels(
      {
        source,
        bits: isReadDeep(header) ? 16 : 8,
        hasMask: header.mayBeClear,
        note: header.colourTag === 'profile' ? 'converted' : null,
      },
      zip,
    );
    return {
      ...embedded,
      write: (take, goOn) => embedded.write(take, goOn).finally(close),
    };
  }

  function drawing(text: string, header: VectorHeader, widthMm: number): EmbeddedPicture {
    const size = vectorPixels(header.size, widthMm);
    let svg: string | null = svgAtSize(text, header, size);
    return embedPixels({ source: { ...size, read }, bits: 8, hasMask: true, note: null }, zip);

    async function read({ y, width, height }: { y: number; width: number; height: number }) {
      const answer = await ask({ kind: 'rowsWanted', svg, size, y, height });
      svg = null;
      if (answer.kind !== 'rows') throw new DamagedPicture('the browser cannot draw it');
      const { source, close } = bitmapPicture(answer.bitmap, 1);
      const rows = source.read({ x: 0, y: 0, width, height });
      close();
      return rows;
    }
  }
}

/** Drawings of lines become pixels at the largest size they are printed at. */
const widthOf = (key: string, { sheets }: SheetsToPrint): number =>
  Math.max(
    ...sheets
      .flatMap(({ pieces }) => pieces)
      .filter(({ picture }) => picture === key)
      .map(({ turned, widthMm, heightMm }) => (turned ? heightMm : widthMm)),
  );
