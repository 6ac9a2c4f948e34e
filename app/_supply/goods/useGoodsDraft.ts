'use client';

import { useState } from 'react';
import type { FileDraft } from '@/app/_attachments/OneFile';
import type { OrderForm } from '@/app/_fields/formMemory';
import { useTyped, useTypedNumber, useTypedText } from '@/app/_fields/useTyped';
import type { OpenOrder, SupplyOnScreen } from '@/app/_supply/supplyOnScreen';
import { stockKey } from '@/lib/stock/stockKey';
import type { SupplyItem } from '@/shared/schemas/making/supply';
import { daySchema } from '@/shared/schemas/rate';
import { z } from '@/shared/schemas/z';
import { answering, type GoodsRowDraft, goodsRowDraftSchema, uncounted } from './goodsDraft';

interface GoodsFrom {
  /** What it answers to begin with; null where that is chosen in the form. */
  readonly order: OpenOrder | null;
  readonly supplierId: string | null;
  readonly wanted: readonly { readonly item: SupplyItem; readonly quantity: number }[];
}

/** A delivery as it is typed; a reload finds it again, but for a bill that was chosen. */
export function useGoodsDraft(
  form: OrderForm,
  { openOrders, today }: Pick<SupplyOnScreen, 'openOrders' | 'today'>,
  { order, supplierId, wanted }: GoodsFrom,
) {
  const [fresh] = useState(() => rowsOf(order?.toCome ?? wanted, order !== null));
  const [day, setDay] = useTyped(form, 'day', daySchema, today);
  const from = order?.order.body.supplierId ?? supplierId;
  const [supplier, setSupplier] = useTyped(form, 'supplier', z.string().nullable(), from);
  const [answeredId, setAnswered] = useTyped(form, 'answers', z.string().nullable(), order?.order.id ?? null);
  const [rows, setRows] = useTyped(form, 'rows', rowsSchema, fresh);
  const [receipt, setReceipt] = useState<FileDraft | null>(null);
  const answered = openOrders.find((one) => one.order.id === answeredId) ?? null;
  return {
    ...{ day, setDay, supplier, setSupplier, rows, setRows, receipt, setReceipt, answered },
    freight: useTypedNumber(form, 'freight'),
    note: useTypedText(form, 'note'),
    answer: (next: OpenOrder | null) => {
      setAnswered(next?.order.id ?? null);
      setRows(answering(rows, rowsOf(next?.toCome ?? [], true)));
    },
  };
}

// Helpers

const rowsSchema = z.array(goodsRowDraftSchema).readonly();

/** Keys that are the same after a reload, so that half-typed numbers find their row. */
const rowsOf = (things: GoodsFrom['wanted'], isOrdered: boolean): readonly GoodsRowDraft[] =>
  things.map(({ item, quantity }, at) =>
    uncounted(`${at} ${stockKey(item)}`, item, isOrdered || quantity > 0 ? quantity : null),
  );
