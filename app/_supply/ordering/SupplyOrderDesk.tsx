'use client';

import { useMemo, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { DateField } from '@/app/_fields/DateField';
import { FieldGroup } from '@/app/_fields/FieldGroup';
import { formMemory, type OrderForm } from '@/app/_fields/formMemory';
import { TextField } from '@/app/_fields/TextField';
import { useTyped, useTypedText } from '@/app/_fields/useTyped';
import { nameOfFile } from '@/app/_papers/nameOfFile';
import { PaperFileTold } from '@/app/_papers/PaperFileTold';
import { PaperSheet } from '@/app/_papers/sheet/PaperSheet';
import { PaperNotWritten, usePaperFile } from '@/app/_papers/usePaperFile';
import styles from '@/app/_supply/Supply.module.css';
import type { SupplyOnScreen } from '@/app/_supply/supplyOnScreen';
import { type IssueState, issueWords } from '@/app/_words/orders/papers/paperIssueWords';
import { orderedAlready } from '@/app/_words/supply/supplyOrderWords';
import {
  type SupplyOrderAsked,
  supplyOrderBody,
  supplyOrderSeries,
} from '@/lib/buying/ordering/supplyOrderBody';
import { type PaperSource, paperOf } from '@/lib/papers/paperOf';
import { labelsFor } from '@/lib/papers/words/labelsFor';
import { textLimits } from '@/shared/limits';
import { orderNumberText } from '@/shared/orderNumberText';
import type { PaperNumber } from '@/shared/schemas/happened';
import { supplyOrderSchema } from '@/shared/schemas/making/runPapers';
import { daySchema } from '@/shared/schemas/rate';

type SupplyOrderDeskProps = Readonly<{
  supply: SupplyOnScreen;
  /** Where what is added is remembered until it goes out. */
  form: OrderForm;
  asked: Pick<SupplyOrderAsked, 'supplierId' | 'supplier' | 'lines' | 'buyingListId'>;
  /** Whether one of this list went to this supplier already. */
  isOut: boolean;
}>;

const noPictures: ReadonlyMap<string, string> = new Map();

/** The order to a supplier before it goes out: what stands on it, by when, the button. */
export function SupplyOrderDesk({ supply, form, asked, isOut }: SupplyOrderDeskProps) {
  const { workspace, today } = supply;
  const { workshop, readFile } = workspace;
  const paperWords = workshop.papers.words;
  const [wantedBy, setWantedBy] = useTyped(form, 'wantedBy', daySchema.nullable(), null);
  const words = useTypedText(form, 'note');
  const note = words.value;
  const [state, setState] = useState<IssueState>({ kind: 'none' });
  const series = supplyOrderSeries(today);
  const likely = likelyNumber(workspace.papers.supplyOrder, series, workspace.device?.letter ?? null);
  const bodyOf = (number: PaperNumber) =>
    supplyOrderBody({ ...asked, workshop, wantedBy, note }, { number, day: today });
  const sourceOf = (number: PaperNumber): PaperSource => {
    const { supplierId: _, buyingListId: __, ...body } = bodyOf(number);
    return { kind: 'supplyOrder', body };
  };
  const isEmpty = bodyOf(likely).rows.length === 0;
  const writer = usePaperFile(isEmpty ? null : sourceOf(likely), { words: paperWords, readFile });
  const { source } = writer;
  const paper = useMemo(
    () => (source === null ? null : paperOf(source, labelsFor(source.body.language, paperWords))),
    [source, paperWords],
  );
  const name = `order ${orderNumberText(bodyOf(likely).number)}`;
  const isIssuing = state.kind === 'issuing';
  const waits = isIssuing
    ? 'It is being issued.'
    : isEmpty
      ? 'Nothing is to be bought here.'
      : writer.state.kind === 'writing'
        ? 'The file is being made.'
        : workspace.kept.state === 'keeping'
          ? 'What was typed is being kept.'
          : undefined;
  const issue = async () => {
    setState({ kind: 'issuing', isOvertaken: false });
    try {
      const outcome = await workspace.issueMade(
        `Issue ${name} to ${asked.supplier.name}`,
        {
          kind: 'supplyOrder',
          about: { kind: 'supplier', id: asked.supplierId },
          series,
          body: bodyOf,
          async file(number) {
            const wanted = sourceOf(number);
            const { file } = await writer.write(wanted);
            const content = new Uint8Array(await file.arrayBuffer());
            return { name: nameOfFile(wanted, paperWords), content };
          },
        },
        () => setState({ kind: 'issuing', isOvertaken: true }),
      );
      if (outcome.state === 'issued') formMemory.forget(form);
      setState(
        outcome.state === 'issued'
          ? { kind: 'issued', lost: 0 }
          : outcome.state === 'overtaken'
            ? { kind: 'overtaken' }
            : { kind: 'notKept', why: outcome.why },
      );
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      setState({ kind: 'notWritten', why: error instanceof PaperNotWritten ? error.why : why });
    }
  };
  return (
    <div className={styles.form}>
      <FieldGroup>
        <DateField label="Wanted by" value={wantedBy} onCommit={setWantedBy} />
        <TextField
          label="To add on the order"
          {...words}
          rows={2}
          {...textLimits(supplyOrderSchema, ['note'])}
        />
      </FieldGroup>
      {isOut && <p className={styles.caution}>{orderedAlready}</p>}
      {source !== null && <PaperFileTold state={writer.state} onAgain={writer.tryAgain} />}
      <div className={styles.acts}>
        <Button kind={isOut ? 'plain' : 'strong'} blockedBy={waits} onPress={() => void issue()}>
          {isIssuing ? 'Issuing…' : `Issue ${name}`}
        </Button>
        <p className={styles.quiet} role="status">
          {issueWords(state)}
        </p>
      </div>
      {paper !== null && <PaperSheet paper={paper} pictures={noPictures} />}
    </div>
  );
}

// Helpers

/** The number it will likely get; another tab may be given it before. */
function likelyNumber(
  papers: readonly { readonly series: string; readonly number: PaperNumber }[],
  series: string,
  letter: string | null,
): PaperNumber {
  const counts = papers.flatMap((one) => (one.series === series ? [one.number.count] : []));
  return { count: Math.max(0, ...counts) + 1, letter: letter ?? 'A' };
}
