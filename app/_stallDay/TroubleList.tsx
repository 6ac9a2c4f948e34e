import { Button } from '@/app/_controls/Button';
import { ButtonLink } from '@/app/_controls/ButtonLink';
import { stallTroubleWords } from '@/app/_words/stall/troubleWords';
import type { StallOnScreen } from './stallOnScreen';
import styles from './TroubleList.module.css';
import { troublePlace } from './troublePlace';

/** What the plan asks before it can be made, or beside it; each leads to where it is said. */
export function TroubleList({ on }: Readonly<{ on: StallOnScreen }>) {
  const { troubles, isRefused, stallDay, formatter, show } = on;
  return (
    <section className={styles.troubles} aria-labelledby="stall-troubles">
      <h2 className={styles.heading} id="stall-troubles">
        {isRefused ? 'Before there is a plan' : 'To settle beside the plan'}
      </h2>
      <ul className={styles.list}>
        {troubles.map((trouble) => {
          const words = stallTroubleWords(trouble, formatter);
          const place = troublePlace(trouble, stallDay, on.workspace.workshop.channels);
          return (
            <li key={JSON.stringify(trouble)} className={styles.row}>
              <p>{words}</p>
              {'href' in place ? (
                <ButtonLink href={place.href} spoken={`Go there: ${words}`}>
                  Go there
                </ButtonLink>
              ) : (
                <Button spoken={`Say it: ${words}`} onPress={() => show(place.field)}>
                  Say it
                </Button>
              )}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
