import type { ForeignRun, ForeignType } from '@/lib/lettering/foreignType';

/** As sharp as a desktop printer prints. */
const PIXELS_PER_PT = 600 / 72;
/** Around what the letters cover, for the blurred edge of their outlines. */
const EDGE_PX = 2;

/** The device's own type, drawn by a canvas; null where a worker has none. */
export function deviceType(): ForeignType | null {
  if (typeof OffscreenCanvas === 'undefined') return null;
  const canvas = new OffscreenCanvas(1, 1);
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (context === null) return null;
  const begin = ({ weight, sizePt, isRightToLeft, colour }: ForeignRun) => {
    // Whatever changes the size of a canvas puts its settings back.
    context.font = `${weight} ${sizePt * PIXELS_PER_PT}px system-ui, sans-serif`;
    context.direction = isRightToLeft ? 'rtl' : 'ltr';
    context.textAlign = 'left';
    context.fillStyle = `rgb(${colour.map((part) => Math.round(part * 255)).join(' ')})`;
  };
  return {
    width(run) {
      begin(run);
      return context.measureText(run.text).width / PIXELS_PER_PT;
    },
    draw(run) {
      begin(run);
      const box = context.measureText(run.text);
      const left = Math.ceil(Math.max(0, box.actualBoundingBoxLeft)) + EDGE_PX;
      const base = Math.ceil(Math.max(0, box.actualBoundingBoxAscent)) + EDGE_PX;
      const widthPx = left + Math.ceil(Math.max(box.width, box.actualBoundingBoxRight)) + EDGE_PX;
      const heightPx = base + Math.ceil(Math.max(0, box.actualBoundingBoxDescent)) + EDGE_PX;
      canvas.width = widthPx;
      canvas.height = heightPx;
      begin(run);
      context.fillText(run.text, left, base);
      const rgba = context.getImageData(0, 0, widthPx, heightPx).data;
      return { widthPx, heightPx, rgba, pixelsPerPt: PIXELS_PER_PT, originPx: [left, base] };
    },
  };
}
