'use client';

import { blankPatterns } from '@/lib/examples/blankPatterns';
import type { StartChoices } from '@/lib/examples/startChoices';
import { textileKinds } from '@/shared/schemas/blank';
import { YesNo } from './YesNo';

type StartAnswersProps = Readonly<{
  choices: StartChoices;
  choose: (answers: Partial<StartChoices>) => void;
  isFirst: boolean;
}>;

/** The few things about the room and the way of working that the checks would ask otherwise. */
export function StartAnswers({ choices, choose, isFirst }: StartAnswersProps) {
  const { make, isAired, hasOwnCircuit, usesFreshPaper, keepsLabel } = choices;
  const isCloth = make === null || textileKinds.includes(blankPatterns[make].kind);
  return (
    <div>
      {isFirst && (
        <>
          <YesNo
            question="Is the room aired while you press?"
            value={isAired}
            onAnswer={(answer) => choose({ isAired: answer })}
          />
          <YesNo
            question="Has the press a circuit to itself?"
            value={hasOwnCircuit}
            onAnswer={(answer) => choose({ hasOwnCircuit: answer })}
            hint={
              hasOwnCircuit === false
                ? 'Then the checks ask under Workshop what else hangs on it.'
                : undefined
            }
          />
        </>
      )}
      <YesNo
        question="Is fresh paper laid under and over each press?"
        value={usesFreshPaper}
        onAnswer={(answer) => choose({ usesFreshPaper: answer })}
      />
      {isCloth && (
        <YesNo
          question="Does the sewn-in fibre label stay on?"
          value={keepsLabel}
          onAnswer={(answer) => choose({ keepsLabel: answer })}
        />
      )}
    </div>
  );
}
