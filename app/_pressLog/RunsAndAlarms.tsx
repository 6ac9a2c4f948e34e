import Link from 'next/link';
import { dayOf } from '@/app/_clock/dayOf';
import type { Formatter } from '@/app/_words/formatter';
import { alarmLine, falseAlarmLine } from '@/app/_words/press/alarmWords';
import { alarmHeads } from '@/app/_words/press/pressWords';
import type { RecipeLog } from '@/lib/pressing/recipeLogs';
import { alarmRules } from '@/lib/pressing/scrapAlarms';
import styles from './Log.module.css';

type RunsAndAlarmsProps = Readonly<{ log: RecipeLog; formatter: Formatter }>;

/** Runs and alarms of a recipe, newest first, and how often each rule speaks up for nothing. */
export const RunsAndAlarms = ({ log, formatter }: RunsAndAlarmsProps) => (
  <>
    <ul className={styles.list}>
      {log.runs.map(({ runId, title, prints, good, seconds, scrap, lastAt }) => (
        <li key={runId}>
          <Link href={`/making/${encodeURIComponent(runId)}`}>{title}</Link>, {prints.join(', ')}: {good} good
          {seconds > 0 && `, ${seconds} seconds`}, {scrap} lost, {formatter.day(dayOf(new Date(lastAt)))}
        </li>
      ))}
    </ul>
    {log.alarms.length > 0 && <h3>Alarms</h3>}
    <ul className={styles.list}>
      {log.alarms.map((alarm) => (
        <li key={`${alarm.rule.act} ${alarm.from}`}>
          <strong>{alarmHeads[alarm.rule.act]}.</strong> {alarmLine(alarm, formatter)}
        </li>
      ))}
    </ul>
    <h3>When it speaks up</h3>
    <ul className={styles.list}>
      {alarmRules.map((rule) => (
        <li key={rule.act}>
          {rule.events} in {rule.trials}: {alarmHeads[rule.act].toLowerCase()}.{' '}
          {falseAlarmLine(rule, formatter)}
        </li>
      ))}
    </ul>
  </>
);
