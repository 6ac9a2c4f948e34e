import type { FontNames } from '@/lib/picture/svg/svgFonts';

/** Letters of very different widths, so that hardly two fonts set them alike. */
const SAMPLE = 'mmMWwwilIl1@#&0Qg%';
const FALLBACKS = ['monospace', 'serif'] as const;

/**
 * Which fonts this device lacks: text asked for in one comes out as wide as in whatever stands behind it, for two that
 * differ.
 *
 * @param widthIn how wide the sample is set in a list of fonts; by the platform's own hand where none is given
 * @returns the first name of each
 */
export function missingFonts(
  fonts: readonly FontNames[],
  widthIn?: (families: string, sample: string) => number,
): readonly string[] {
  if (fonts.length === 0) return [];
  const width = widthIn ?? platformWidth();
  const isThere = (name: string) =>
    FALLBACKS.some((fallback) => width(`"${name}", ${fallback}`, SAMPLE) !== width(fallback, SAMPLE));
  return fonts.flatMap((names) =>
    names.some((name) => isThere(name.replace(/["\\]/g, ''))) ? [] : [names[0]],
  );
}

function platformWidth(): (families: string, sample: string) => number {
  const context = new OffscreenCanvas(1, 1).getContext('2d');
  return (families, sample) => {
    if (context === null) throw new Error('this browser gives a worker no drawing surface');
    context.font = `72px ${families}`;
    return context.measureText(sample).width;
  };
}
