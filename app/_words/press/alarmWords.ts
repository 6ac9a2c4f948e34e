import type { Formatter } from '@/app/_words/formatter';
import { type AlarmRule, BASE_SCRAP, falseAlarmChance, type ScrapAlarm } from '@/lib/pressing/scrapAlarms';
import { byLuckWords } from './pressWords';

/** @returns what gave an alarm, as it is read with gloves on */
export const alarmAtPress = ({ scrap, rule }: ScrapAlarm): string =>
  `${scrap} lost in a block of ${rule.trials}. ${byLuckWords('blocks', falseAlarmChance(rule))}`;

/** @returns what gave an alarm, and how often it is given for nothing */
export const alarmLine = ({ scrap, rule }: ScrapAlarm, formatter: Formatter): string =>
  `${scrap} lost in a block of ${rule.trials}. ${falseAlarmLine(rule, formatter)}`;

/** @returns how often a rule speaks up although nothing is wrong */
export const falseAlarmLine = (rule: AlarmRule, formatter: Formatter): string =>
  `With only ${formatter.share(BASE_SCRAP)} spoiled, ${formatter.share(falseAlarmChance(rule))} of such blocks would show ${rule.events} or more by chance.`;
