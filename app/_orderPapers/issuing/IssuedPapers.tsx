'use client';

import { useEffect, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import styles from '@/app/_orderPapers/OrderPapers.module.css';
import type { OrderOnPaper } from '@/app/_orderPapers/orderOnPaper';
import { FileActions } from '@/app/_papers/FileActions';
import { WithdrawForm } from '@/app/_papers/WithdrawForm';
import { lostFileWords } from '@/app/_words/attachments/attachmentWords';
import { outWords, paperName } from '@/app/_words/orders/papers/outWords';
import { onePaperWords, withdrawalWords } from '@/app/_words/orders/papers/paperTabWords';
import { withdrawalTold } from '@/app/_words/orders/papers/withdrawalTold';
import { isPlainObject } from '@/lib/merging/sameValue';
import type { OrderPaper } from '@/lib/orders/orderFacts';
import { withdrawalReasons } from '@/shared/schemas/entries';

type IssuedPapersProps = Readonly<{ of: OrderOnPaper; kind: OrderPaper['kind'] }>;

/** What went out of one kind, the last first: each with its file as it went, and the way to withdraw it. */
export function IssuedPapers({ of, kind }: IssuedPapersProps) {
  const out = of.facts.happened.flatMap((one) => ('withdrawn' in one && one.kind === kind ? [one] : []));
  if (out.length === 0) return null;
  return (
    <section aria-label={`What went out: ${onePaperWords[kind]}`}>
      <h3 className={styles.sub}>What went out</h3>
      <ul className={styles.rows}>
        {out.toReversed().map((paper) => (
          <IssuedRow key={paper.id} {...{ of, paper }} />
        ))}
      </ul>
    </section>
  );
}

// Helpers

type IssuedRowProps = Readonly<{ of: OrderOnPaper; paper: OrderPaper }>;

function IssuedRow({ of, paper }: IssuedRowProps) {
  const { workspace } = of;
  const [isAsking, setAsking] = useState(false);
  const name = paperName(paper);
  const content = useKeptFile(paper, workspace.readFile);
  return (
    <li className={styles.row}>
      <div className={styles.rowWords}>
        <p>
          {name}
          {paper.withdrawn && <strong> · withdrawn</strong>}
        </p>
        <p className={styles.quiet}>
          {outWords(paper, of.formatter, of.locale)}
          {paper.withdrawn && withdrawnWhy(of, paper)}
        </p>
        {content === 'lost' && (
          <p className={styles.wrong} role="alert">
            {lostFileWords(paper.file?.name ?? name)}
          </p>
        )}
      </div>
      <div className={styles.acts}>
        <FileActions
          name={paper.file?.name ?? `${name}.pdf`}
          content={content instanceof Blob ? content : null}
          spoken={name}
          blockedBy={content === 'lost' ? 'The file is not on this device any more.' : undefined}
        />
        {!paper.withdrawn && !isAsking && (
          <Button kind="quiet" spoken={`Withdraw ${name}`} onPress={() => setAsking(true)}>
            Withdraw
          </Button>
        )}
      </div>
      {isAsking && !paper.withdrawn && (
        <WithdrawForm
          name={name}
          told={withdrawalTold(paper, of, of.locale)}
          onLeave={() => setAsking(false)}
          onWithdraw={(why) => {
            workspace.withdraw(`Withdraw ${name}`, paper.id, why);
            setAsking(false);
          }}
        />
      )}
    </li>
  );
}

/** @returns the bytes that went out; `lost` where the browser has them no more, null while they are read. */
function useKeptFile(
  { file }: Pick<OrderPaper, 'file'>,
  readFile: OrderOnPaper['workspace']['readFile'],
): Blob | 'lost' | null {
  const [found, setFound] = useState<Blob | 'lost' | null>(null);
  const id = file?.sha256 ?? null;
  useEffect(() => {
    if (id === null) return setFound('lost');
    let isLeft = false;
    readFile(id).then(
      (kept) => {
        if (!isLeft) setFound(kept?.content ?? 'lost');
      },
      () => {
        if (!isLeft) setFound('lost');
      },
    );
    return () => {
      isLeft = true;
    };
  }, [id, readFile]);
  return found;
}

/** Why it was withdrawn, as far as it was said; undo says nothing. */
function withdrawnWhy({ workspace }: OrderOnPaper, { id }: OrderPaper): string {
  const entries = workspace.allEntries();
  const issued = new Set(
    entries.flatMap(({ kind, id: entryId, body }) =>
      kind === 'issuing' && isPlainObject(body) && body.paperId === id ? [entryId] : [],
    ),
  );
  const back = entries.findLast(
    ({ kind, body }) => kind === 'takeBack' && isPlainObject(body) && issued.has(String(body.entryId)),
  );
  const why = isPlainObject(back?.body) ? back.body.why : undefined;
  const reason = withdrawalReasons.find((one) => one === why);
  return reason === undefined ? '' : ` · ${withdrawalWords[reason]}`;
}
