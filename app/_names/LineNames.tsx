'use client';

import { useMemo } from 'react';
import { FoldRow } from '@/app/_controls/FoldRow';
import { useTextContext } from '@/app/_fields/useTextContext';
import { formatterFor } from '@/app/_words/formatter';
import { namesAnswerWords } from '@/app/_words/names/namesAnswerWords';
import { compareCounts } from '@/lib/names/compareCounts';
import type { Order } from '@/shared/schemas/order';
import { CountDifference } from './CountDifference';
import { NameRows } from './NameRows';
import styles from './Names.module.css';
import { NamesIntake } from './NamesIntake';
import type { NamesWorkspace } from './namesWorkspace';
import type { NamedLine } from './orderNames';
import { sizesOf } from './orderNamesAnswer';
import { PrintedNames } from './PrintedNames';
import { SizeFormPart } from './SizeFormPart';

type LineNamesProps = Readonly<{
  workspace: NamesWorkspace;
  orderId: string;
  order: Order;
  named: NamedLine;
  /** Whether the order makes nothing else, so that it need not be named. */
  isAlone: boolean;
}>;

/** The names of one thing that is made: whether they are as many as ordered, and the ways to fill and mend them. */
export function LineNames({ workspace, orderId, order, named, isAlone }: LineNamesProps) {
  const { line, blank, rows } = named;
  const formatter = formatterFor(useTextContext());
  const sizes = useMemo(() => sizesOf({ blank, line }), [blank, line]);
  const compared = useMemo(() => compareCounts(rows, line.quantities, sizes), [rows, line.quantities, sizes]);
  const { key, after } = namesAnswerWords(compared, formatter);
  const place = { workspace, orderId, named, sizes };
  return (
    <section className={styles.line} aria-label={`Names of ${line.name}`}>
      {!isAlone && (
        <h3 className={styles.heading}>
          <bdi>{line.name}</bdi>
        </h3>
      )}
      <p className={styles.answer}>
        <strong>{key}</strong>
        {after}
      </p>
      <CountDifference {...{ workspace, orderId, named, compared }} />
      <PrintedNames {...{ workspace, orderId, named }} />
      <FoldRow
        place={orderId}
        folds={[
          ...(rows.length === 0
            ? []
            : [{ id: `names-${line.id}`, name: 'Names', body: () => <NameRows {...place} /> }]),
          { id: `take-${line.id}`, name: 'Paste or read names', body: () => <NamesIntake {...place} /> },
          {
            id: `form-${line.id}`,
            name: 'Form to fill',
            body: () => <SizeFormPart {...place} order={order} />,
          },
        ]}
      />
    </section>
  );
}
