'use client';

import { useToday } from '@/app/_clock/useToday';
import { Advice } from '@/app/_controls/Advice';
import { Button } from '@/app/_controls/Button';
import { OriginMark } from '@/app/_controls/OriginMark';
import { useJob } from '@/app/_docket/common/useJob';
import { newId } from '@/app/_documents/newId';
import { useTextContext } from '@/app/_fields/useTextContext';
import { sellingSaid } from '@/app/_words/docket/sellingWords';
import { type Formatter, formatterFor } from '@/app/_words/formatter';
import { channelKindWords } from '@/app/_words/workshop/workshopWords';
import { newParts } from '@/lib/drafts/newParts';
import type { ChannelsAnswer, SoldWay } from '@/lib/studies/channels/channelsAnswer';
import styles from './ChannelsSection.module.css';

/** The same pieces sold in four ways, side by side, and whether wholesale can be done. */
export function WaysOfSelling({ found }: Readonly<{ found: ChannelsAnswer }>) {
  const { workspace } = useJob();
  const formatter = formatterFor(useTextContext());
  const today = useToday();
  const add = (kind: SoldWay['kind']) => {
    const name = channelKindWords[kind];
    workspace.changeWorkshop(`Add ${name}`, (now) => ({
      ...now,
      channels: [...now.channels, newParts(today, now).channel(newId(), name, kind)],
    }));
  };
  const { rule } = found;
  return (
    <>
      <p className={styles.words}>
        The same {formatter.count(found.pieces, 'piece')}, at {formatter.money(found.retailEach)} to the last
        buyer without tax.
      </p>
      <ul className={styles.ways}>
        {found.ways.map((way) => (
          <li className={styles.way} key={way.kind}>
            <h3 className={styles.kind}>
              {channelKindWords[way.kind]} {way.isJobs && <span className={styles.jobs}>this job</span>}
            </h3>
            <p className={styles.of}>
              {way.channelId === null ? 'not in your workshop yet' : way.name}{' '}
              {way.isCustomary && <OriginMark origin="typical" />}
              {sellingSaid[way.selling] !== '' && (
                <span className={styles.said}>{sellingSaid[way.selling]}</span>
              )}
            </p>
            <dl className={styles.figures}>
              {figuresOf(way, formatter).map(([name, text, marks]) => (
                <div className={styles.figure} key={name}>
                  <dt>{name}</dt>
                  <dd data-figure={way.isJobs ? marks : undefined}>{text}</dd>
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
      {rule !== null && (
        <p className={styles.words}>
          {rule.holds
            ? `Wholesale can be done: your margin asks for ${formatter.money(rule.wholesale)} a piece from a shop; doubled there it comes to ${formatter.money(rule.leastRetail)}, no more than you ask yourself.`
            : `Decline wholesale, or raise the price: your margin asks for ${formatter.money(rule.wholesale)} a piece from a shop, which doubles it to ${formatter.money(rule.leastRetail)}, more than the ${formatter.money(found.retailEach)} you ask yourself.`}{' '}
          Never sell under the price of your shops at a stall.
        </p>
      )}
      <Advice severity="caution">
        Tax and its rounding are set by law and differ from place to place. Ask your local authority.
      </Advice>
    </>
  );
}

// Helpers

function figuresOf(
  way: SoldWay,
  formatter: Formatter,
): readonly (readonly [name: string, text: string, marks?: 'margin' | 'pay'])[] {
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
