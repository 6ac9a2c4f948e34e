'use client';

import { type RefObject, useState } from 'react';
import { curveCsv } from '@/lib/exports/curveCsv';
import type { CurveStudy } from '@/lib/price/curve/curveAnswer';
import { drawSvg } from '../_artwork/drawSvg';
import { standaloneSvg } from '../_charts/standaloneSvg';
import { saveBytes } from '../_documents/saveBytes';
import { useTextContext } from '../_fields/useTextContext';
import { Button } from '../_shell/Button';

type CurveSaveProps = Readonly<{ frame: RefObject<HTMLElement | null>; study: CurveStudy; name: string }>;

/** Twice as fine as the screen, for print. */
const FINE = 2;

/** Hands out the curve: its figures for a spreadsheet, its drawing for a paper. */
export function CurveSave({ frame, study, name }: CurveSaveProps) {
  const { currency } = useTextContext();
  const [trouble, setTrouble] = useState<string | null>(null);
  const bytesOf = (text: string) => new TextEncoder().encode(text);
  const drawing = () => {
    const svg = frame.current?.querySelector('svg');
    if (!(svg instanceof SVGSVGElement)) throw new Error('there is no drawing yet');
    return standaloneSvg(svg);
  };
  const save = async (make: () => Promise<void> | void) => {
    setTrouble(null);
    try {
      await make();
    } catch (error) {
      setTrouble(error instanceof Error ? error.message : String(error));
    }
  };
  const csv = () =>
    saveBytes(
      `${name}, batches.csv`,
      bytesOf(curveCsv(name, currency, study.points)),
      'text/csv;charset=utf-8',
    );
  const svg = () => saveBytes(`${name}, batches.svg`, bytesOf(drawing().text), 'image/svg+xml');
  const png = async () => {
    const { text, width, height } = drawing();
    const size = { width: Math.round(width * FINE), height: Math.round(height * FINE) };
    const bitmap = await drawSvg(text, size);
    const canvas = new OffscreenCanvas(size.width, size.height);
    canvas.getContext('2d')?.drawImage(bitmap, 0, 0);
    bitmap.close();
    const blob = await canvas.convertToBlob({ type: 'image/png' });
    saveBytes(`${name}, batches.png`, new Uint8Array(await blob.arrayBuffer()), 'image/png');
  };
  return (
    <>
      <Button kind="quiet" onPress={() => void save(csv)}>
        Save as CSV
      </Button>
      <Button kind="quiet" onPress={() => void save(svg)}>
        Save as SVG
      </Button>
      <Button kind="quiet" onPress={() => void save(png)}>
        Save as PNG
      </Button>
      {trouble !== null && <p role="alert">It could not be saved: {trouble}.</p>}
    </>
  );
}
