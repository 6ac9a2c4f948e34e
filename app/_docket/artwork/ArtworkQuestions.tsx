'use client';

import { Button } from '@/app/_controls/Button';
import { useJob } from '@/app/_docket/common/useJob';
import type { Picture } from '@/shared/schemas/picture';
import styles from './ArtworkQuestions.module.css';

type ArtworkQuestionsProps = Readonly<{ artworkId: string; name: string; picture: Picture }>;

/** What only the maker can say of a picture: whether a box around it and white inside it are meant so. */
export function ArtworkQuestions({ artworkId, name, picture }: ArtworkQuestionsProps) {
  const { workspace } = useJob();
  const { background, accepted } = picture;
  const answer = (key: keyof Picture['accepted'], isMeant: boolean) =>
    workspace.setField(
      { kind: 'artwork', id: artworkId },
      key === 'box' ? `Background of ${name}` : `White in ${name}`,
      ['picture', 'accepted', key],
      isMeant,
    );
  const hasBox = background?.prints ?? false;
  if (!hasBox && !accepted.white) return null;
  return (
    <div className={styles.questions}>
      {hasBox && (
        <p className={styles.question}>
          {accepted.box
            ? 'You said its solid background is meant to print.'
            : 'It stands on a solid background, which will print as a coloured box. Is that meant so?'}{' '}
          <Button kind={accepted.box ? 'quiet' : 'plain'} onPress={() => answer('box', !accepted.box)}>
            {accepted.box ? 'Take that back' : 'It is meant so'}
          </Button>
        </p>
      )}
      {accepted.white && (
        <p className={styles.question}>
          You said bare cloth is right where it is white.{' '}
          <Button kind="quiet" onPress={() => answer('white', false)}>
            Take that back
          </Button>
        </p>
      )}
    </div>
  );
}
