import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { LaterPart } from '@/app/_network/LaterPart';
import type { RunFacts } from '@/lib/making/runFacts';
import { laterParts } from './laterParts';

type RunNoteProps = Readonly<{
  facts: RunFacts;
  workspace: ReadyWorkspace;
  /** Its place in its list, from 0. */
  at: number;
}>;

/** So many of the newest say what they came to: reckoning it of hundreds would hold up the list. */
const WITH_RESULT = 10;

/** What is to be minded of a run: under way, what changed of its jobs since it began; closed, what it came to. */
export function RunNote({ facts, workspace, at }: RunNoteProps) {
  const { standard, isClosed } = facts;
  if (standard === null) return null;
  if (!isClosed)
    return (
      <LaterPart
        part={laterParts.changed}
        what="What changed since it began"
        props={{ workspace, frozen: standard.body }}
      />
    );
  return at < WITH_RESULT ? (
    <LaterPart part={laterParts.cameTo} what="What it came to" props={{ workspace, facts }} />
  ) : null;
}
