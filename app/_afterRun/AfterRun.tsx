import { Card } from '@/app/_controls/Card';
import { CardSection } from '@/app/_controls/CardSection';
import { PageHead } from '@/app/_controls/PageHead';
import { ClockBehind } from '@/app/_keeping/ClockBehind';
import { LaterPart } from '@/app/_network/LaterPart';
import { lineWords, sparesWords, troubleWords } from '@/app/_words/afterRun/afterRunWords';
import { lossWords } from '@/app/_words/afterRun/gapWords';
import { severalBegan } from '@/app/_words/making/runs/severalBegan';
import { minorMoney, minorWords } from '@/app/_words/orders/minorWords';
import { type ActualTrouble, isTimeDoubtful } from '@/lib/variances/actualTroubles';
import { largestLosses } from '@/lib/variances/largestLosses';
import styles from './AfterRun.module.css';
import { AfterRunHead } from './AfterRunHead';
import type { AfterRunOnScreen } from './afterRunOnScreen';
import { BridgePart } from './BridgePart';
import { laterParts } from './laterParts';
import { SoFarSection } from './SoFarSection';

/** What a run took, held against what it was to take: the way between both profits, and what it teaches. */
export function AfterRun({ on }: Readonly<{ on: AfterRunOnScreen }>) {
  const { workspace, figures, result, standard, formatter, locale } = on;
  const { facts, troubles, closed } = figures;
  const { run, isClosed } = facts;
  const { currency, sum } = result;
  return (
    <>
      <PageHead title={`${run.name}, after the run`} line={lineWords(facts, result, formatter, locale)} />
      <ClockBehind clockBehind={workspace.clockBehind} />
      {isClosed && <AfterRunHead {...{ result, formatter, locale }} isDoubtful={isTimeDoubtful(troubles)} />}
      {isClosed && result.spares.pieces + result.spares.seconds > 0 && (
        <p className={styles.quiet}>{sparesWords(result, formatter, locale)}</p>
      )}
      {troubles.filter(isSaidHere).map((trouble) => (
        <p key={JSON.stringify(trouble)} className={styles.trouble}>
          {troubleWords(trouble, formatter, locale)}
        </p>
      ))}
      <LaterPart
        part={laterParts.causes}
        what="What nobody named"
        props={{ workspace, facts, frozen: standard.body }}
      />
      <LaterPart
        part={laterParts.changed}
        what="What changed since it began"
        props={{ workspace, frozen: standard.body }}
      />
      {facts.otherStandards.length > 0 && <p className={styles.trouble}>{severalBegan}</p>}
      <Card>
        {isClosed ? (
          <CardSection
            numeral={1}
            id="after-bridge"
            heading={`Where ${minorMoney(Math.abs(sum), currency, locale)} ${sum > 0 ? 'came from' : 'went'}`}
            answer={<Answer on={on} />}
          >
            <BridgePart on={on} />
          </CardSection>
        ) : (
          <SoFarSection on={on} />
        )}
        <LaterPart part={laterParts.took} what="What it took" props={{ on }} />
        <LaterPart part={laterParts.lessons} what="What runs teach" props={{ on }} />
        {closed.length > 0 && <LaterPart part={laterParts.runs} what="All runs" props={{ on }} />}
      </Card>
    </>
  );
}

// Helpers

/** Pieces without a cause are said where each is named. */
const isSaidHere = ({ what }: ActualTrouble): boolean => what !== 'withoutCause';

/** The two largest of what cost something, price and use of one thing together. */
function Answer({ on: { result, locale } }: Readonly<{ on: AfterRunOnScreen }>) {
  const [most, next] = largestLosses(result);
  const words = (minor: number) => minorWords(minor, result.currency, locale);
  if (most === undefined) return <>Nothing cost more than planned</>;
  return (
    <>
      <strong>
        {lossWords[most.group]} took {words(most.minor)}
      </strong>
      {next !== undefined && `; ${lossWords[next.group].toLowerCase()} ${words(next.minor)}`}
    </>
  );
}
