import { describe, expect, it } from 'vitest';
import { fileOfTransfer } from '@/app/_artwork/fileOfTransfer';
import { pictureOfReading } from '@/app/_artwork/pictureOfReading';
import { analysePicture } from '@/lib/artwork/analysePicture';
import { inkProfile } from '@/lib/ink/inkProfile';
import type { PictureHeader } from '@/lib/picture/pictureHeader';
import { sourceOf } from '@/lib/picture/pictureSource';
import { pictureSchema } from '@/shared/schemas/picture';
import { clear, cyan, gridOf } from '@/tests/fixtures/pictures/gridOf';

const file = { fileId: 'f1', fileName: 'badge.png', bytes: 900 };
const raster: PictureHeader = {
  kind: 'raster',
  format: 'png',
  stored: { width: 40, height: 40 },
  size: { width: 40, height: 40 },
  orientation: 1,
  orientationPlace: null,
  density: { kind: 'declared', xPpi: 300, yPpi: 300, from: 'pHYs' },
  bitsPerChannel: 8,
  mayBeClear: true,
  colourTag: 'profile',
  isAnimated: false,
};

function reading(header: PictureHeader, isInked: (x: number) => boolean) {
  const thumbnail = gridOf(40, 40, (x) => (isInked(x) ? cyan : clear));
  const steps = analysePicture(sourceOf(thumbnail));
  let step = steps.next();
  while (!step.done) step = steps.next();
  const size = { width: 40, height: 40 };
  return {
    header,
    size,
    analysis: step.value,
    profile: inkProfile(thumbnail),
    colours: 'displayP3' as const,
    liveFonts: ['Futura'],
  };
}

describe('what is kept of a picture that was read', () => {
  it('is a record its schema takes, with the facts of the file', () => {
    const picture = pictureOfReading(
      reading(raster, (x) => x < 20),
      file,
    );
    expect(pictureSchema.parse(picture)).toEqual(picture);
    expect(picture).toMatchObject({
      ...file,
      format: 'png',
      density: { xPpi: 300, yPpi: 300 },
      coverage: { cyan: 0.5, magenta: 0, yellow: 0, black: 0 },
      content: { x: 0, y: 0, width: 20, height: 40 },
      colourTag: 'profile',
      profile: 'displayP3',
      liveFonts: ['Futura'],
    });
  });

  it('holds for a drawing, and for a picture with nothing in it', () => {
    const drawing: PictureHeader = {
      kind: 'vector',
      format: 'svg',
      size: { width: 8, height: 8 },
      hasViewBox: true,
    };
    const picture = pictureOfReading(
      reading(drawing, () => false),
      file,
    );
    expect(pictureSchema.parse(picture)).toEqual(picture);
    expect(picture).toMatchObject({ format: 'svg', density: null, colourTag: 'sRGB', content: null });
  });
});

describe('what a drop or a paste brings', () => {
  const png = new File(['x'], 'a.png');

  it.each([
    ['one file', [png], { kind: 'file', file: png }],
    ['words or a link', [], { kind: 'nothing' }],
    ['several', [png, png], { kind: 'several', count: 2 }],
    ['nothing at all', null, { kind: 'nothing' }],
  ])('%s', (_, files, expected) => {
    expect(fileOfTransfer(files)).toEqual(expected);
  });
});
