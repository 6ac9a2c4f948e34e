import { classes } from '@/app/_controls/classes';
import type { TextContext } from '@/app/_words/formatter';
import { stageWords, trackWords } from '@/app/_words/orders/waits/trackWords';
import type { BoardOrder } from '@/lib/orders/board/todayList';
import styles from './TrackStub.module.css';

type TrackStubProps = Readonly<{
  standing: BoardOrder['standing'];
  today: string;
  context: TextContext;
}>;

const STAGE_PX = 22;
const HIGH_PX = 27;

/** The six stretches of an order's way, those behind filled and the present one hot, with words beneath. */
export function TrackStub({ standing, today, context }: TrackStubProps) {
  const { track } = standing;
  const at = track.findIndex(({ place }) => place === 'present');
  const present = track[at];
  const wide = STAGE_PX * track.length;
  return (
    <div className={styles.stub}>
      <svg
        className={styles.drawing}
        viewBox={`-1 -1 ${wide + 2} ${HIGH_PX + 2}`}
        width={wide + 2}
        height={HIGH_PX + 2}
        aria-hidden="true"
        focusable="false"
      >
        <rect className={styles.ground} width={wide} height={HIGH_PX} rx="4" />
        {track.map(({ stage, place }, index) =>
          place === 'ahead' ? null : place === 'past' ? (
            <rect
              key={stage}
              className={classes(styles.past, styles[stage])}
              x={index * STAGE_PX}
              width={STAGE_PX}
              height={HIGH_PX}
            />
          ) : (
            <path
              key={stage}
              className={styles.present}
              d={[3, 10, 17].map((x) => `M${index * STAGE_PX + x + 1.5} 0v${HIGH_PX}`).join('')}
            />
          ),
        )}
        <path
          className={styles.borders}
          d={track
            .slice(1)
            .map((_, index) => `M${(index + 1) * STAGE_PX} 0v${HIGH_PX}`)
            .join('')}
        />
        <rect className={styles.edge} width={wide} height={HIGH_PX} rx="4" />
      </svg>
      <p className={styles.words}>
        {present !== undefined && (
          <span className="visuallyHidden">
            {stageWords[present.stage]}, {at + 1} of {track.length}:{' '}
          </span>
        )}
        {trackWords({ standing }, today, context)}
      </p>
    </div>
  );
}
