import { labelRoom } from './labelRoom';
import { RulerDrawing } from './RulerDrawing';
import { RulerList } from './RulerList';
import touch from './RulerTouch.module.css';
import type { RulerBounds, RulerMark } from './rulerMark';

type StandingRulerProps = Readonly<{
  marks: readonly RulerMark[];
  flag: number;
  bounds: RulerBounds;
  format: (value: number) => string;
  payToWorkBelow: number | null;
  /** Nothing has been measured yet: the width it is most likely to have. */
  widthPx: number;
}>;

/** The ruler as it looks, before any script can move it. */
export function StandingRuler({
  flag,
  bounds,
  format,
  payToWorkBelow,
  widthPx,
  ...rest
}: StandingRulerProps) {
  const marks = rest.marks.toSorted((a, b) => a.value - b.value);
  const room = labelRoom(marks, { bounds, format, widthPx, scale: 1 });
  const shown = marks.find(({ id }) => id === 'target') ?? marks[0];
  return (
    <>
      <RulerDrawing
        {...{ marks, bounds, format, payToWorkBelow, widthPx }}
        scale={1}
        size="full"
        flagValue={flag}
        middles={room.kind === 'named' ? room.middles : null}
      />
      {room.kind === 'figures' && (
        <>
          <ul className={touch.cells}>
            {marks.map(({ id, value }) => (
              <li key={id}>
                <span className={`${touch.cell} ${touch.still}`} data-shown={id === shown?.id || undefined}>
                  {format(value)}
                </span>
              </li>
            ))}
          </ul>
          <p className={touch.told}>
            {shown === undefined ? '\u00a0' : `${shown.label} ${format(shown.value)}`}
          </p>
        </>
      )}
      {room.kind === 'list' && <RulerList {...{ marks, format }} />}
    </>
  );
}
