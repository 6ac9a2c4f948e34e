import type { StartingBlankName } from '@/lib/examples/blankPatterns';
import styles from './Drawing.module.css';

/** A thing that is made, with its print on it, drawn in a few lines. */
export function MakeDrawing({ make }: Readonly<{ make: StartingBlankName }>) {
  return (
    <svg className={styles.drawing} viewBox="0 0 80 72" aria-hidden="true" focusable="false">
      {shapes[make]}
    </svg>
  );
}

/** Two hills on a ground: the picture on everything. */
function Print({ x, y, w, h }: Readonly<{ x: number; y: number; w: number; h: number }>) {
  const base = y + h;
  return (
    <>
      <rect className={styles.print} x={x} y={y} width={w} height={h} />
      <path
        className={styles.hills}
        d={`M${x} ${base}V${y + h * 0.72}L${x + w * 0.3} ${y + h * 0.45}L${x + w * 0.5} ${y + h * 0.68}L${x + w * 0.7} ${y + h * 0.4}L${x + w} ${y + h * 0.75}V${base}Z`}
      />
    </>
  );
}

const shirt = (
  <>
    <path
      className={styles.body}
      d="M30 8C33 14 47 14 50 8L60 12L74 26L65 35L58 30V66H22V30L15 35L6 26L20 12Z"
    />
    <Print x={29} y={26} w={22} h={24} />
  </>
);

const shapes: Readonly<Record<StartingBlankName, React.ReactNode>> = {
  shirt,
  performance: shirt,
  mug: (
    <>
      <path className={styles.body} d="M54 24H62Q69 24 69 31V43Q69 50 62 50H54" />
      <path className={styles.body} d="M16 10H54V58Q54 63 49 63H21Q16 63 16 58Z" />
      <Print x={16} y={22} w={38} h={28} />
    </>
  ),
  tumbler: (
    <>
      <path className={styles.body} d="M25 6H55L51 66H29Z" />
      <path className={styles.print} d="M26 18H54L52 54H28Z" />
      <path className={styles.line} d="M25 12H55" />
    </>
  ),
  panel: (
    <>
      <path className={styles.line} d="M30 58L24 68M50 58L56 68" />
      <rect className={styles.body} x="10" y="8" width="60" height="50" rx="2" />
      <Print x={16} y={14} w={48} h={38} />
    </>
  ),
  tote: (
    <>
      <path className={styles.line} d="M29 28V18Q29 7 40 7Q51 7 51 18V28" />
      <path className={styles.body} d="M18 26H62L67 66H13Z" />
      <Print x={28} y={34} w={24} h={24} />
    </>
  ),
  cushion: (
    <>
      <path className={styles.body} d="M12 10Q40 17 68 10Q61 37 68 64Q40 57 12 64Q19 37 12 10Z" />
      <Print x={25} y={23} w={30} h={28} />
    </>
  ),
  mat: (
    <>
      <rect className={styles.body} x="6" y="16" width="68" height="44" rx="6" />
      <Print x={12} y={21} w={56} h={34} />
    </>
  ),
  tile: (
    <>
      <rect className={styles.body} x="13" y="9" width="54" height="54" rx="2" />
      <Print x={18} y={14} w={44} h={44} />
    </>
  ),
  keyring: (
    <>
      <circle className={styles.line} cx="40" cy="14" r="9" />
      <path className={styles.line} d="M40 23V32" />
      <rect className={styles.body} x="22" y="30" width="36" height="36" rx="5" />
      <Print x={28} y={36} w={24} h={24} />
    </>
  ),
};
