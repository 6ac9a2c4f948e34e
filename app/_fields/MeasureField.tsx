'use client';

import { useMeasures } from '@/app/_numbers/measures';
import { type EdgeKind, unitEdge } from '@/app/_numbers/unitEdge';
import { NumberField } from './NumberField';

type MeasureFieldProps = Readonly<{
  label: string;
  kind: EdgeKind;
  /** As the document keeps it: mm, km, °C, or a share of 1. */
  value: number | null;
  /** Told in the unit the document keeps. */
  onCommit: (value: number | null) => void;
  onRest?: (() => void) | undefined;
  /** Bounds in the unit the document keeps. */
  min?: number | undefined;
  max?: number | undefined;
  /** The value must be more than this. */
  above?: number | undefined;
  needed?: boolean | undefined;
  hint?: string | undefined;
  /** What holds while it is empty, as a sentence. */
  whenEmpty?: string | undefined;
  caution?: string | undefined;
  issue?: string | undefined;
  width?: 'narrow' | 'normal' | 'full' | undefined;
  id?: string | undefined;
}>;

/** A length, distance, temperature or share, typed in the maker's own unit. */
export function MeasureField({ kind, value, onCommit, ...rest }: MeasureFieldProps) {
  const edge = unitEdge(kind, useMeasures());
  return (
    <NumberField
      {...rest}
      unit={edge.unit}
      edge={edge}
      value={value === null ? null : edge.shown(value)}
      onCommit={(typed) => onCommit(typed === null ? null : edge.kept(typed))}
    />
  );
}
