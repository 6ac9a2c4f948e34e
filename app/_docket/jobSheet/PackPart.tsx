import type { JobInput } from '@/shared/schemas/request';
import styles from './JobSheet.module.css';
import { SheetPart } from './SheetPart';
import { Tick, Ticks } from './Ticks';

type PackPartProps = Readonly<{ input: JobInput; numeral: number; pieces: string }>;

/** The last step: counted, packed, and what went wrong written down. */
export function PackPart({ input: { job, workshop }, numeral, pieces }: PackPartProps) {
  const packagings = [
    ...new Set(
      job.lines.flatMap(
        ({ packagingId }) => workshop.packagings.find(({ id }) => id === packagingId)?.name ?? [],
      ),
    ),
  ];
  const hasNames = job.lines.some(({ nameList }) => nameList.trim() !== '');
  return (
    <SheetPart numeral={numeral} heading="Check, fold, pack">
      <Ticks>
        <Tick>{pieces} counted by size</Tick>
        {hasNames && <Tick>each name against the list</Tick>}
        {packagings.map((name) => (
          <Tick key={name}>
            <bdi>{name}</bdi>
          </Tick>
        ))}
        {/* Who packs it with one has said so in the name of the packaging. */}
        {!packagings.some((name) => /care card/i.test(name)) && <Tick>care card</Tick>}
        <Tick>label legible</Tick>
        <Tick>pads wiped, log written</Tick>
      </Ticks>
      <p className={styles.faults}>
        <span>faults, tallied:</span>
        {['ghost', 'specks', 'blur', 'yellow', 'reversed'].map((fault) => (
          <span className={styles.writeIn} key={fault}>
            {fault}
          </span>
        ))}
      </p>
    </SheetPart>
  );
}
