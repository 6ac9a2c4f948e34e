'use client';

import { newParts } from '@/lib/jobs/newParts';
import type { SoldWay } from '@/lib/price/channels/channelsAnswer';
import { newId } from '../_documents/newId';
import { useMaker } from '../_documents/useMaker';
import { useToday } from '../_documents/useToday';
import { useTextContext } from '../_fields/useTextContext';
import { DocketSection } from '../_figures/DocketSection';
import { OriginMark } from '../_figures/OriginMark';
import { Advice } from '../_shell/Advice';
import { Button } from '../_shell/Button';
import { useStudy } from '../_studies/useStudy';
import { type Speaker, speakerOf } from '../_text/speaker';
import { AnswerMissing } from '../_workers/AnswerMissing';
import { channelKindWords } from '../_workshop/workshopWords';
import styles from './ChannelsSection.module.css';
import type { DocketPart } from './docketPart';
import { LastGood } from './LastGood';
import { NotYet } from './NotYet';
import { TillPart } from './TillPart';

/** Section 9: the same pieces sold in four ways, and what the buyer pays at the till. */
export function ChannelsSection({ answer, madeOf, stale }: DocketPart) {
  const context = useTextContext();
  const speak = speakerOf(context);
  const today = useToday();
  const { changeWorkshop } = useMaker();
  const isPriced = answer?.prices != null;
  const { newest, failure } = useStudy('channels', isPriced ? madeOf : null, null);
  const found = newest?.answer ?? null;
  const add = (kind: SoldWay['kind']) => {
    const name = channelKindWords[kind];
    changeWorkshop(`Add ${name}`, (now) => ({
      ...now,
      channels: [...now.channels, newParts(today, now).channel(newId(), name, kind)],
    }));
  };
  return (
    <DocketSection
      numeral={9}
      heading="Ways of selling"
      line={
        found === null
          ? undefined
          : `the same ${speak.count(found.pieces, 'piece')}, at ${speak.money(found.retailEach)} to the last buyer without tax`
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
            {found !== null && found.trouble !== null && (
              <p role="alert">
                {found.trouble.kind === 'unknownCost'
                  ? 'A formula of your own gives no number for another way of selling.'
                  : `${found.trouble.name}: its ${found.trouble.field} of ${speak.number(found.trouble.value)} cannot be meant. Look at it in the workshop; a share lies under 100 %.`}
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
                      {figuresOf(way, speak).map(([name, text]) => (
                        <div className={styles.figure} key={name}>
                          <dt>{name}</dt>
                          <dd>{text}</dd>
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
                ? `Wholesale can be done: your margin asks for ${speak.money(found.rule.wholesale)} a piece from a shop; doubled there it comes to ${speak.money(found.rule.leastRetail)}, no more than you ask yourself.`
                : `Decline wholesale, or raise the price: your margin asks for ${speak.money(found.rule.wholesale)} a piece from a shop, which doubles it to ${speak.money(found.rule.leastRetail)}, more than the ${speak.money(found.retailEach)} you ask yourself.`}{' '}
              Never sell under the price of your shops at a stall.
            </p>
          )}
          {found !== null && <TillPart till={found.till} currency={found.currency} />}
          <Advice severity="caution">
            Tax and its rounding are set by law and differ from place to place. Ask your local authority.
          </Advice>
        </>
      )}
    </DocketSection>
  );
}

// Helpers

function figuresOf(way: SoldWay, speak: Speaker): readonly (readonly [string, string])[] {
  return [
    ['is invoiced', speak.money(way.revenue)],
    ['fees', speak.money(way.fees)],
    ['comes in', speak.money(way.net)],
    ['selling costs you', speak.money(way.costToServe)],
    ['full cost', speak.money(way.fullCost)],
    ['profit', speak.money(way.profit)],
    ['margin', speak.share(way.margin)],
    ['pays an hour', speak.money(way.payPerHour)],
    ['money is there', way.cashInDays === 0 ? 'at once' : `after ${speak.count(way.cashInDays, 'day')}`],
  ];
}
