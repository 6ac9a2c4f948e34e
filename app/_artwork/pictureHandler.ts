import { analysePicture, type PictureAnalysis } from '@/lib/artwork/analysePicture';
import { inkProfile } from '@/lib/ink/inkProfile';
import { inspectPicture } from '@/lib/picture/inspectPicture';
import type { PictureHeader, PixelSize, VectorHeader } from '@/lib/picture/pictureHeader';
import { pictureLimits } from '@/lib/picture/pictureLimits';
import type { PictureProblem } from '@/lib/picture/pictureProblem';
import { croppedSource } from '@/lib/picture/pictureSource';
import { refuseBytes } from '@/lib/picture/readHeader';
import { svgAtSize } from '@/lib/picture/svg/svgAtSize';
import { svgFonts } from '@/lib/picture/svg/svgFonts';
import { svgText } from '@/lib/picture/svg/svgText';
import { vectorPixels } from '@/lib/picture/svg/vectorPixels';
import { sha256InSlices } from '@/lib/stored/sha256InSlices';
import { failed, ok, type Result } from '@/shared/result';
import type { DecodedPicture, PictureDecoder } from './decodedPicture';
import type { PictureQuestion, PictureReply } from './messages';
import { missingFonts } from './missingFonts';
import { profileOfFile } from './profileOfFile';

interface PictureTools {
  readonly decoder: PictureDecoder;
  readonly post: (reply: PictureReply) => void;
  /** Lets waiting messages in: a cancel is heard between two steps. */
  readonly pause: () => Promise<void>;
}

type Read = Extract<PictureQuestion, { kind: 'read' }>;
type Drawing = (drawn: Result<ImageBitmap, string>) => void;

/** Share of the way that is done once a stage begins. */
const DONE = { reading: 0, decoding: 0.1, measuring: 0.5 } as const;

class Cancelled extends Error {}

/**
 * Answers the questions about pictures, one picture at a time: the newest. The worker is only its wiring.
 *
 * @returns takes one question; resolves once that is answered
 */
export function pictureHandler({
  decoder,
  post,
  pause,
}: PictureTools): (question: PictureQuestion) => Promise<void> {
  let current: number | null = null;
  let drawing: Drawing | null = null;

  return async (question) => {
    switch (question.kind) {
      case 'read':
        endCurrent();
        current = question.number;
        return answer(question);
      case 'cancel':
        if (question.number === current) endCurrent();
        return;
      case 'drawn':
        if (question.number !== current || drawing === null) question.bitmap.close();
        else drawing(ok(question.bitmap));
        return;
      case 'notDrawn':
        if (question.number === current) drawing?.(failed(question.why));
        return;
      default:
        question satisfies never;
    }
  };

  function endCurrent(): void {
    if (current === null) return;
    post({ kind: 'cancelled', number: current });
    current = null;
    drawing?.(failed('cancelled'));
    drawing = null;
  }

  async function answer(question: Read): Promise<void> {
    const { number } = question;
    const reply = await replyTo(question).catch((error): PictureReply | null =>
      error instanceof Cancelled
        ? null
        : { kind: 'failed', number, why: error instanceof Error ? error.message : String(error) },
    );
    if (reply === null || current !== number) return;
    current = null;
    post(reply);
  }

  async function replyTo(question: Read): Promise<PictureReply> {
    const { number, file, crop } = question;
    const refused = (problem: PictureProblem): PictureReply => ({ kind: 'refused', number, problem });
    const tooLarge = refuseBytes(file.size);
    if (tooLarge !== null) return refused(tooLarge);
    tell(number, 'reading', 0);
    const bytes = new Uint8Array(await file.arrayBuffer());
    goOn(number);
    const header = inspectPicture(bytes);
    if (!header.ok) return refused(header.problem);
    const sha256 = await sha256InSlices(bytes, () => pauseOf(number));
    const colours = header.value.kind === 'raster' ? await profileOfFile(bytes, header.value) : null;
    goOn(number);
    tell(number, 'decoding', 0);
    const picture = await unpack(question, bytes, header.value);
    if (!picture.ok) return refused(picture.problem);
    const { source, thumbnail, close } = picture.value;
    try {
      goOn(number);
      const analysis = await measured(number, crop === null ? source : croppedSource(source, crop));
      const size: PixelSize = { width: source.width, height: source.height };
      const { pixels, bitmap } = thumbnail();
      const profile = inkProfile(pixels);
      const liveFonts =
        header.value.kind === 'vector'
          ? missingFonts(svgFonts(svgText(bytes), pictureLimits.mostShapes))
          : [];
      const reading = { header: header.value, size, analysis, profile, colours, liveFonts };
      return { kind: 'read', number, reading, file: { sha256, content: new Blob([bytes]) }, preview: bitmap };
    } finally {
      close();
    }
  }

  function unpack(
    question: Read,
    bytes: Uint8Array<ArrayBuffer>,
    header: PictureHeader,
  ): Promise<Result<DecodedPicture, PictureProblem>> {
    return header.kind === 'raster'
      ? decoder.decode(bytes, header)
      : unpackDrawing(question, svgText(bytes), header);
  }

  async function unpackDrawing(
    { number, printWidthMm }: Read,
    text: string,
    header: VectorHeader,
  ): Promise<Result<DecodedPicture, PictureProblem>> {
    const size = vectorPixels(header.size, printWidthMm);
    const drawn = await new Promise<Result<ImageBitmap, string>>((resolve) => {
      drawing = resolve;
      post({ kind: 'draw', number, svg: svgAtSize(text, header, size), size });
    });
    goOn(number);
    drawing = null;
    return drawn.ok
      ? ok(decoder.hold(drawn.value))
      : failed({ kind: 'cannotDecode', format: 'svg', why: drawn.problem });
  }

  async function measured(number: number, source: DecodedPicture['source']): Promise<PictureAnalysis> {
    const steps = analysePicture(source);
    for (;;) {
      const step = steps.next();
      if (step.done) return step.value;
      tell(number, 'measuring', step.value);
      await pauseOf(number);
    }
  }

  async function pauseOf(number: number): Promise<void> {
    await pause();
    goOn(number);
  }

  function tell(number: number, stage: keyof typeof DONE, share: number): void {
    const from = DONE[stage];
    const to = stage === 'reading' ? DONE.decoding : stage === 'decoding' ? DONE.measuring : 1;
    post({ kind: 'progress', number, stage, share: from + (to - from) * share });
  }

  function goOn(number: number): void {
    if (current !== number) throw new Cancelled();
  }
}
