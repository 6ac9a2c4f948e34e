'use client';

import { useState } from 'react';
import { fileName } from '@/app/_files/saveBlob';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { IssueState } from '@/app/_words/orders/paperIssueWords';
import { type PaperSource, paperOf } from '@/lib/papers/paperOf';
import { labelsFor } from '@/lib/papers/words/labelsFor';
import type { PaperSettings } from '@/shared/schemas/seller';
import { type PaperToGo, paperToMake } from './paperToGo';
import { PaperNotWritten, type PaperWriter } from './usePaperFile';

interface IssuingFacts {
  readonly workspace: Pick<ReadyWorkspace, 'issueMade' | 'workshop'>;
  readonly orderId: string;
  readonly day: string;
  readonly writer: PaperWriter;
  /** What undo says. */
  readonly label: string;
  readonly onIssued: (() => void) | undefined;
}

interface Issuing {
  readonly state: IssueState;
  readonly issue: (paper: PaperToGo) => Promise<void>;
}

/** Issues a paper: body, file and number are kept together or not at all. */
export function useIssuing({ workspace, orderId, day, writer, label, onIssued }: IssuingFacts): Issuing {
  const [state, setState] = useState<IssueState>({ kind: 'none' });
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
      const outcome = await workspace.issueMade(label, paperToMake(paper, { orderId, day, write }), () =>
        setState({ kind: 'issuing', isOvertaken: true }),
      );
      if (outcome.state === 'issued') {
        setState({ kind: 'issued', lost: lost.length });
        onIssued?.();
      } else
        setState(
          outcome.state === 'overtaken' ? { kind: 'overtaken' } : { kind: 'notKept', why: outcome.why },
        );
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      setState({ kind: 'notWritten', why: error instanceof PaperNotWritten ? error.why : why });
    }
  };
  return { state, issue };
}

/** @returns the title of a paper as a file may be called. */
export function nameOfFile(source: PaperSource, words: PaperSettings['words']): string {
  const { title } = paperOf(source, labelsFor(source.body.language, words));
  const plain = fileName(title.replaceAll(/[\u2066-\u2069\p{Cc}]/gu, ''));
  return `${plain.slice(0, 150).trim() || 'Paper'}.pdf`;
}
