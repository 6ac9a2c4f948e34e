'use client';

import { Button } from '@/app/_controls/Button';
import styles from '@/app/_orderPapers/OrderPapers.module.css';
import type { OrderOnPaper } from '@/app/_orderPapers/orderOnPaper';
import { PaperFileTold } from '@/app/_papers/PaperFileTold';
import { usePaperFile } from '@/app/_papers/usePaperFile';
import { paperSaid } from '@/app/_words/orders/papers/outWords';
import { issueWords } from '@/app/_words/orders/papers/paperIssueWords';
import type { OrderPaperKind } from '@/lib/kinds/paperFacts';
import { IssuedPapers } from './IssuedPapers';
import { PaperPreview } from './PaperPreview';
import { likelyPaperNumber, type PaperToGo, sourceOf } from './paperToGo';
import { useIssuing } from './useIssuing';

type PaperDeskProps = Readonly<{
  of: OrderOnPaper;
  kind: OrderPaperKind;
  /** Null while it cannot go out. */
  paper: PaperToGo | null;
  /** Why not. */
  blockedBy?: string | undefined;
  /** What it waits for although it is there and shown. */
  waitsFor?: string | undefined;
  /** Whether a newer one is being made. */
  isBusy?: boolean;
  /** Whether issuing is the one thing to do here. */
  isNext: boolean;
  onIssued?: (() => void) | undefined;
}>;

/** A paper before it goes out: what stands on it, what is to be known before, the button; then what went out. */
export function PaperDesk({
  of,
  kind,
  paper,
  blockedBy,
  waitsFor,
  isBusy = false,
  isNext,
  onIssued,
}: PaperDeskProps) {
  const { workspace, orderId, today, order } = of;
  const { words } = workspace.workshop.papers;
  const number = likelyPaperNumber({
    ...{ kind, orderId, day: today },
    papers: workspace.papers[kind],
    letter: workspace.device?.letter ?? null,
  });
  const writer = usePaperFile(paper === null ? null : sourceOf(paper, number), {
    words,
    readFile: workspace.readFile,
  });
  const { source } = writer;
  const name = paperSaid(kind, number, { issuedOn: today, order: of.standing.number });
  const { state, issue } = useIssuing({
    ...{ workspace, orderId, day: today, writer },
    label: `Issue ${name} of ${order.name}`,
    ...{ onIssued, paper },
  });
  const isIssuing = state.kind === 'issuing';
  const waits = isIssuing
    ? 'It is being issued.'
    : paper === null || waitsFor !== undefined
      ? (waitsFor ?? blockedBy)
      : isBusy
        ? 'A newer one is being made.'
        : // What cannot be shown on it is told before it goes out.
          writer.state.kind === 'writing'
          ? 'The file is being made.'
          : // A number that an entry waits for is not yet its own.
            workspace.kept.state === 'keeping'
            ? 'What was typed is being kept.'
            : undefined;
  const told = issueWords(state);
  // Of a quote further versions are as wanted as the first; its own part says where nothing changed. An invoice that
  // can go out asks for what no other does.
  const isOut =
    kind !== 'quote' &&
    kind !== 'invoice' &&
    of.facts.happened.some((one) => 'withdrawn' in one && one.kind === kind && !one.withdrawn);
  return (
    <>
      {source !== null && <PaperFileTold state={writer.state} onAgain={writer.tryAgain} />}
      <div className={styles.acts}>
        <Button
          kind={isNext && paper !== null && !isOut ? 'strong' : 'plain'}
          blockedBy={waits}
          onPress={() => paper !== null && void issue(paper)}
        >
          {isIssuing ? 'Issuing…' : `Issue ${name}`}
        </Button>
        <p className={styles.quiet} role="status">
          {[told, isIssuing ? null : (waitsFor ?? (paper === null ? blockedBy : null))]
            .filter(Boolean)
            .join(' ')}
        </p>
      </div>
      <IssuedPapers {...{ of, kind }} />
      {source !== null && (
        <>
          <h3 className={styles.sub}>What would go out as {name}</h3>
          <PaperPreview {...{ source, words }} readFile={workspace.readFile} />
        </>
      )}
    </>
  );
}
