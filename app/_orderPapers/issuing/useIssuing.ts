'use client';

import { useEffect, useRef, useState } from 'react';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { nameOfFile } from '@/app/_papers/nameOfFile';
import { PaperNotWritten, type PaperWriter } from '@/app/_papers/usePaperFile';
import type { IssueState } from '@/app/_words/orders/papers/paperIssueWords';
import type { PaperSource } from '@/lib/papers/paperOf';
import { AnotherWasFirst, isStillWanted, type PaperToGo, paperToMake } from './paperToGo';

interface IssuingFacts {
  readonly workspace: Pick<ReadyWorkspace, 'issueMade' | 'workshop'>;
  readonly orderId: string;
  readonly day: string;
  readonly writer: PaperWriter;
  /** What undo says. */
  readonly label: string;
  readonly onIssued: (() => void) | undefined;
  /** What could go out by what is known now; null where it cannot. */
  readonly paper: PaperToGo | null;
}

interface Issuing {
  readonly state: IssueState;
  readonly issue: (paper: PaperToGo) => Promise<void>;
}

/** Issues a paper: body, file and number are kept together or not at all. */
export function useIssuing({
  workspace,
  orderId,
  day,
  writer,
  label,
  onIssued,
  paper: newest,
}: IssuingFacts): Issuing {
  const [state, setState] = useState<IssueState>({ kind: 'none' });
  const known = useRef(newest);
  useEffect(() => {
    known.current = newest;
  }, [newest]);
  const { words } = workspace.workshop.papers;
  const issue = async (paper: PaperToGo) => {
    setState({ kind: 'issuing', isOvertaken: false });
    let lost: readonly string[] = [];
    const write = async (source: PaperSource) => {
      const made = await writer.write(source);
      lost = made.lost;
      const content = new Uint8Array(await made.file.arrayBuffer());
      return { name: nameOfFile(source, words), content };
    };
    try {
      const outcome = await workspace.issueMade(
        label,
        paperToMake(paper, { orderId, day, write, mayGo: () => isStillWanted(paper, known.current) }),
        () => setState({ kind: 'issuing', isOvertaken: true }),
      );
      if (outcome.state === 'issued') {
        setState({ kind: 'issued', lost: lost.length });
        onIssued?.();
      } else
        setState(
          outcome.state === 'overtaken' ? { kind: 'overtaken' } : { kind: 'notKept', why: outcome.why },
        );
    } catch (error) {
      if (error instanceof AnotherWasFirst) {
        setState({ kind: 'anotherWasFirst' });
        return;
      }
      const why = error instanceof Error ? error.message : String(error);
      setState({ kind: 'notWritten', why: error instanceof PaperNotWritten ? error.why : why });
    }
  };
  return { state, issue };
}
