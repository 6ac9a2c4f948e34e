'use client';

import { useState } from 'react';
import { useNow } from '@/app/_clock/useNow';
import { keepsFocus } from '@/app/_controls/keepsFocus';
import { usePageName } from '@/app/_controls/usePageName';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { LaterPart } from '@/app/_network/LaterPart';
import { useWakeLock } from '@/app/_tab/useWakeLock';
import { isLeft } from '@/lib/pressing/atPress';
import { CausePart } from './CausePart';
import { DonePart } from './DonePart';
import { DwellPart } from './DwellPart';
import { laterParts } from './laterParts';
import styles from './Press.module.css';
import { PressFoot, type PressPanel } from './PressFoot';
import { PressHead } from './PressHead';
import { PressSheet } from './PressSheet';
import { PressTold } from './PressTold';
import { SparesPart } from './SparesPart';
import { type FrozenStandard, usePressing } from './usePressing';
import { VerdictPart } from './VerdictPart';

type PressRoomProps = Readonly<{
  workspace: ReadyWorkspace;
  runId: string;
  standard: FrozenStandard;
  locale: string;
}>;

/** All of the press: what is in it, what became of the one before, and what is left. */
export function PressRoom({ workspace, runId, standard, locale }: PressRoomProps) {
  const pressing = usePressing(workspace, runId, standard);
  const now = useNow(pressing?.at.inPress != null);
  const wake = useWakeLock();
  const [panel, setPanel] = useState<PressPanel | null>(null);
  usePageName(`${standard.body.title}: press`);
  if (pressing === null) return <h1>{standard.body.title}: no print is pressed in this run.</h1>;
  const { at, last } = pressing;
  const asked =
    at.isAsking && last?.kind === 'pressing' && last.body.result !== 'good' && last.body.fault === null
      ? last
      : null;
  const isDone = asked === null && isLeft(pressing.turn, at);
  const close = () => setPanel(null);
  return (
    <div className={styles.press} data-press="" ref={keepsFocus}>
      <PressHead {...{ pressing, now, locale }} />
      <div className={styles.sides}>
        {!isDone && <DwellPart {...{ pressing, now }} isSmall={asked !== null} />}
        <div className={styles.side}>
          {asked !== null && <CausePart {...{ pressing, asked }} />}
          <PressTold pressing={pressing} onOpen={setPanel} />
          <LaterPart
            part={laterParts.changed}
            what="What changed since it began"
            props={{ workspace, frozen: standard.body }}
          />
          {isDone && <DonePart pressing={pressing} />}
          {asked === null && !isDone && <VerdictPart pressing={pressing} />}
          {!isDone && <SparesPart pressing={pressing} />}
          <PressFoot pressing={pressing} onOpen={setPanel} />
        </div>
      </div>
      {panel === 'more' && (
        <PressSheet name="More" onClose={close}>
          <LaterPart
            part={laterParts.more}
            what="What else there is at the press"
            props={{ pressing, wake, onDone: close, onOpen: setPanel }}
          />
        </PressSheet>
      )}
      {panel === 'test' && (
        <PressSheet name="Test press" onClose={close}>
          <LaterPart part={laterParts.test} what="The test press" props={{ pressing, onDone: close }} />
        </PressSheet>
      )}
      {panel === 'causes' && (
        <PressSheet name="What was wrong" onClose={close}>
          <LaterPart part={laterParts.causes} what="What nobody named" props={{ pressing }} />
        </PressSheet>
      )}
    </div>
  );
}
