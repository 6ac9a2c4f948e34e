'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { Issued, IssueRefusal } from '@/lib/priceLists/issuePriceList';
import type { PriceList } from '@/shared/schemas/priceList';
import styles from './PriceLists.module.css';

type IssuePartProps = Readonly<{
  id: string;
  list: PriceList;
  /** True while the prices are being made. */
  isBusy: boolean;
  issued: Issued;
  workspace: ReadyWorkspace;
  onIssued: (number: number) => void;
}>;

const refusals: Readonly<Record<IssueRefusal, string>> = {
  noItems: 'There is nothing on the list. Add an item first.',
  itemsRefused: 'It cannot be issued while something stands against an item: see above.',
  mixedTax:
    'Some items are sold with tax inside and others without: on one paper nobody could tell. Sell their jobs the same way, or make two lists.',
};

/** Freezes the draft as the next version. */
export function IssuePart({ id, list, isBusy, issued, workspace, onIssued }: IssuePartProps) {
  const [told, setTold] = useState<string | null>(null);
  const number = (list.versions.at(-1)?.number ?? 0) + 1;
  const issue = () => {
    if (issued.kind === 'refused') {
      setTold(refusals[issued.why]);
      return;
    }
    setTold(null);
    const outcome = workspace.changePriceList(id, `Issue version ${number}`, (now) => ({
      ...now,
      versions: [...now.versions, issued.version],
    }));
    if (outcome.state === 'shown') onIssued(number);
  };
  return (
    <div className={styles.acts}>
      <Button
        kind="strong"
        blockedBy={isBusy ? 'The prices are being made.' : undefined}
        describedBy="issue-told"
        onPress={issue}
      >
        Issue version {number}
      </Button>
      <p id="issue-told" role="status">
        {issued.kind === 'refused' ? told : null}
      </p>
    </div>
  );
}
