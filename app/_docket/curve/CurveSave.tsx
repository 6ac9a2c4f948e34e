'use client';

import { type RefObject, useState } from 'react';
import { drawSvg } from '@/app/_artwork/drawSvg';
import { standaloneSvg } from '@/app/_charts/standaloneSvg';
import { Button } from '@/app/_controls/Button';
import { useTextContext } from '@/app/_fields/useTextContext';
import { saveBytes } from '@/app/_files/saveBytes';
import { curveCsv } from '@/lib/exports/curveCsv';
import type { CostCurve } from '@/lib/studies/curve/curveAnswer';
import styles from './CurveSave.module.css';

type CurveSaveProps = Readonly<{
  /** Holds the drawing. */
  frame: RefObject<HTMLElement | null>;
  study: CostCurve;
  /** Of the job. */
  name: string;
  /** Written under the drawing. */
  captions: readonly string[];
}>;

/** Twice as fine as the screen, for print. */
const FINE = 2;

/** Hands out the curve: its figures for a spreadsheet, its drawing for a paper. */
export function CurveSave({ frame, study, name, captions }: CurveSaveProps) {
  const { currency } = useTextContext();
  const [problem, setProblem] = useState<string | null>(null);
  const bytesOf = (text: string) => new TextEncoder().encode(text);
  const drawing = () => {
    const svg = frame.current?.querySelector('svg[data-chart]');
    if (!(svg instanceof SVGSVGElement)) throw new Error('the drawing is not there');
    return standaloneSvg(svg, captions);
  };
  const save = async (make: () => Promise<void> | void) => {
    setProblem(null);
    try {
      await make();
    } catch (error) {
      setProblem(error instanceof Error ? error.message : String(error));
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
    <div className={styles.save}>
      <span aria-hidden="true">Save as</span>
      <Button kind="quiet" onPress={() => void save(csv)}>
        <span className="visuallyHidden">Save as </span>
        CSV
      </Button>
      <Button kind="quiet" onPress={() => void save(svg)}>
        <span className="visuallyHidden">Save as </span>
        SVG
      </Button>
      <Button kind="quiet" onPress={() => void save(png)}>
        <span className="visuallyHidden">Save as </span>
        PNG
      </Button>
      {problem !== null && <p role="alert">It could not be saved: {problem}.</p>}
    </div>
  );
}
