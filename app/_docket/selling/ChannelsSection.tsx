'use client';

import { useToday } from '@/app/_clock/useToday';
import { Advice } from '@/app/_controls/Advice';
import { Button } from '@/app/_controls/Button';
import { CardSection } from '@/app/_controls/CardSection';
import { OriginMark } from '@/app/_controls/OriginMark';
import { LastGood } from '@/app/_docket/common/LastGood';
import { NotYet } from '@/app/_docket/common/NotYet';
import { useJob } from '@/app/_docket/common/useJob';
import { newId } from '@/app/_documents/newId';
import { useTextContext } from '@/app/_fields/useTextContext';
import { useStudy } from '@/app/_studies/useStudy';
import { type Formatter, formatterFor } from '@/app/_words/formatter';
import { channelKindWords } from '@/app/_words/workshop/workshopWords';
import { AnswerMissing } from '@/app/_workers/AnswerMissing';
import { newParts } from '@/lib/drafts/newParts';
import type { SoldWay } from '@/lib/studies/channels/channelsAnswer';
import styles from './ChannelsSection.module.css';
import { TillPart } from './TillPart';

/** Section 9: the same pieces sold in four ways, and what the buyer pays at the till. */
export function ChannelsSection() {
  const { workspace, prices } = useJob();
  const { answer, madeOf, stale } = prices;
  const context = useTextContext();
  const formatter = formatterFor(context);
  const today = useToday();
  const isPriced = answer?.prices != null;
  const { newest, failure } = useStudy('channels', isPriced ? madeOf : null, null);
  const found = newest?.answer ?? null;
  const add = (kind: SoldWay['kind']) => {
    const name = channelKindWords[kind];
    workspace.changeWorkshop(`Add ${name}`, (now) => ({
      ...now,
      channels: [...now.channels, newParts(today, now).channel(newId(), name, kind)],
    }));
  };
  return (
    <CardSection
      numeral={9}
      heading="Ways of selling"
      answer={
        found === null
          ? undefined
          : `the same ${formatter.count(found.pieces, 'piece')}, at ${formatter.money(found.retailEach)} to the last buyer without tax`
      }
      id="channels"
    >
      {!isPriced ? (
        <NotYet what="The ways of selling" />
      ) : (
        <>
          {stale && <LastGood />}
          <AnswerMissing what="The ways of selling could not be compared" failure={failure} />
          <div className={styles.room} aria-busy={newest?.input !== madeOf}>
            {found !== null && found.problem !== null && (
              <p role="alert">
                {found.problem.kind === 'unknownCost'
                  ? 'A formula of your own gives no number for another way of selling.'
                  : `${found.problem.name}: its ${found.problem.field} of ${formatter.number(found.problem.value)} cannot be meant. Look at it in the workshop; a share lies under 100 %.`}
              </p>
            )}
            {found !== null && (
              <ul className={styles.ways}>
                {found.ways.map((way) => (
                  <li className={styles.way} key={way.kind}>
                    <h3 className={styles.kind}>
                      {channelKindWords[way.kind]}{' '}
                      {way.isJobs && <span className={styles.jobs}>this job</span>}
                    </h3>
                    <p className={styles.of}>
                      {way.channelId === null ? 'not in your workshop yet' : way.name}{' '}
                      {way.isCustomary && <OriginMark origin="typical" />}
                    </p>
                    <dl className={styles.figures}>
                      {figuresOf(way, formatter).map(([name, text, figure]) => (
                        <div className={styles.figure} key={name}>
                          <dt>{name}</dt>
                          <dd data-figure={way.isJobs ? figure : undefined}>{text}</dd>
                        </div>
                      ))}
                    </dl>
                    {way.channelId === null && (
                      <Button onPress={() => add(way.kind)}>
                        Add {channelKindWords[way.kind].toLowerCase()} to the workshop
                      </Button>
                    )}
                  </li>
                ))}
              </ul>
            )}
          </div>
          {found !== null && found.rule !== null && (
            <p className={styles.words}>
              {found.rule.holds
                ? `Wholesale can be done: your margin asks for ${formatter.money(found.rule.wholesale)} a piece from a shop; doubled there it comes to ${formatter.money(found.rule.leastRetail)}, no more than you ask yourself.`
                : `Decline wholesale, or raise the price: your margin asks for ${formatter.money(found.rule.wholesale)} a piece from a shop, which doubles it to ${formatter.money(found.rule.leastRetail)}, more than the ${formatter.money(found.retailEach)} you ask yourself.`}{' '}
              Never sell under the price of your shops at a stall.
            </p>
          )}
          {found !== null && <TillPart till={found.till} currency={found.currency} />}
          <Advice severity="caution">
            Tax and its rounding are set by law and differ from place to place. Ask your local authority.
          </Advice>
        </>
      )}
    </CardSection>
  );
}

// Helpers

function figuresOf(
  way: SoldWay,
  formatter: Formatter,
): readonly (readonly [name: string, text: string, figure?: 'margin' | 'pay'])[] {
  return [
    ['is invoiced', formatter.money(way.revenue)],
    ['fees', formatter.money(way.fees)],
    ['comes in', formatter.money(way.net)],
    ['selling costs you', way.selling === 'notSaid' ? 'not counted' : formatter.money(way.costToServe)],
    ['full cost', formatter.money(way.fullCost)],
    ['profit', formatter.money(way.profit)],
    ['margin', formatter.share(way.margin), 'margin'],
    ['pays an hour', formatter.money(way.payPerHour), 'pay'],
    ['money is there', way.cashInDays === 0 ? 'at once' : `after ${formatter.count(way.cashInDays, 'day')}`],
  ];
}
