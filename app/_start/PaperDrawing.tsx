import type { StartPaper } from '@/lib/examples/startChoices';
import styles from './Drawing.module.css';

/** Papers beside each other in their true proportions. */
export function PaperDrawing({ paper }: Readonly<{ paper: StartPaper }>) {
  return (
    <svg className={styles.drawing} viewBox="0 0 80 56" aria-hidden="true" focusable="false">
      {paper === 'roll' ? roll : <Sheet {...sizes[paper]} />}
    </svg>
  );
}

/** A tenth of each sheet, in mm. */
const sizes: Readonly<Record<Exclude<StartPaper, 'roll'>, Readonly<{ w: number; h: number }>>> = {
  letter: { w: 24, h: 31 },
  a4: { w: 23, h: 33 },
  a3: { w: 33, h: 46 },
  wide: { w: 36, h: 53 },
};

function Sheet({ w, h }: Readonly<{ w: number; h: number }>) {
  const x = 40 - w / 2;
  const y = 55 - h;
  return (
    <>
      <rect className={styles.body} x={x} y={y} width={w} height={h} />
      <rect className={styles.print} x={x + 3} y={y + 3} width={w - 6} height={h * 0.55} />
    </>
  );
}

const roll = (
  <>
    <path className={styles.body} d="M20 20H60V52H20Z" />
    <rect className={styles.print} x="24" y="30" width="32" height="18" />
    <rect className={styles.body} x="14" y="6" width="52" height="16" rx="8" />
    <ellipse className={styles.line} cx="60" cy="14" rx="3" ry="5" />
  </>
);
