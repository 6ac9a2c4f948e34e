import type { Halftone } from '@/lib/ink/dotArea';
import { type InkReading, inkMeter } from '@/lib/ink/inkMeter';
import { inEightBits } from '@/lib/picture/inEightBits';
import type { PictureSource } from '@/lib/picture/pictureSource';
import { type BackgroundBox, backgroundBox } from './backgroundBox';
import { type ClearReading, clearMeter } from './clearMeter';
import { type EdgeReading, edgeMeter } from './edgeMeter';
import { type WhiteReading, whiteMeter } from './whiteMeter';

/** Everything read from the pixels of a picture. */
export interface PictureAnalysis {
  readonly ink: InkReading;
  readonly clear: ClearReading;
  readonly background: BackgroundBox;
  readonly white: WhiteReading;
  readonly edges: EdgeReading;
}

/** Pixels of one step: a few milliseconds, so that a step between is soon reached. */
const STEP_PIXELS = 500_000;

/**
 * Reads a picture in steps. Each step gives the share that is done, 0–1; whoever runs it may stop between two
 * steps, and nothing is kept.
 *
 * @returns through the generator's return value
 */
export function* analysePicture(
  source: PictureSource,
  model?: Halftone,
): Generator<number, PictureAnalysis, void> {
  const { width, height } = source;
  const ink = inkMeter(model);
  const clear = clearMeter();
  const white = whiteMeter(source);
  const edges = edgeMeter();
  const stepRows = Math.max(1, Math.floor(STEP_PIXELS / width));
  for (let y = 0; y < height; y += stepRows) {
    const rows = source.read({ x: 0, y, width, height: Math.min(stepRows, height - y) });
    ink.add(rows);
    const small = inEightBits(rows);
    clear.add(small);
    white.add(small);
    edges.add(small);
    yield Math.min(1, (y + stepRows) / height);
  }
  const clearReading = clear.read();
  const { content } = clearReading;
  return {
    ink: ink.read(),
    clear: clearReading,
    background: content.kind === 'nothing' ? { kind: 'none' } : backgroundBox(source, content),
    white: white.read(),
    edges: edges.read(),
  };
}
