import { CardSection } from '@/app/_controls/CardSection';
import { FoldRow } from '@/app/_controls/FoldRow';
import { RunClock } from '@/app/_runBook/RunClock';
import { actualWords } from '@/app/_words/afterRun/actualWords';
import { tookWords } from '@/app/_words/afterRun/tookWords';
import { metresEach } from '@/lib/variances/metresEach';
import { ActualsForm } from './ActualsForm';
import type { AfterRunOnScreen } from './afterRunOnScreen';
import { CloseRun } from './CloseRun';
import { TimeForm, TimesNoted } from './TimeForm';

/** What the run took, each thing with its fields folded away; then it is closed. */
export function TookSection({ on }: Readonly<{ on: AfterRunOnScreen }>) {
  const { workspace, figures, result, standard, formatter, locale } = on;
  const { runId, hours, isClosed } = figures.facts;
  const roll = metresEach(standard.body.works);
  const { key, after } = tookWords(result, roll, formatter, locale);
  return (
    <CardSection
      numeral={2}
      id="after-actuals"
      heading="What it took"
      answer={
        <>
          <strong>{key}</strong>
          {after}
        </>
      }
    >
      {!isClosed && <RunClock {...{ workspace, runId, locale }} />}
      <FoldRow
        place={`after ${runId}`}
        folds={[
          ...(['blanks', 'sheets', 'ink', 'money'] as const).map((about) => ({
            id: about,
            name: about === 'sheets' && roll !== null ? actualWords.rollUsed : actualWords.forms[about],
            body: () => <ActualsForm {...{ on, about }} />,
          })),
          { id: 'time', name: 'Time worked', body: () => <TimeForm on={on} /> },
          ...(hours.length === 0
            ? []
            : [{ id: 'times', name: `Times noted (${hours.length})`, body: () => <TimesNoted on={on} /> }]),
        ]}
      />
      <CloseRun on={on} />
    </CardSection>
  );
}
