'use client';

import type { PlacementProps } from '@/app/_docket/common/placementProps';
import { Options } from '@/app/_fields/Options';
import styles from './ArtworkPick.module.css';
import { useArtworkChoice } from './useArtworkChoice';

/** The picture of a print in a few letters under its drawing; another is chosen without opening anything. */
export function ArtworkPick(part: PlacementProps) {
  const { value, choices, onCommit } = useArtworkChoice(part);
  return (
    <select
      className={styles.pick}
      aria-label={`Picture of ${part.placement.name}`}
      value={value ?? ''}
      onChange={(event) => onCommit(event.target.value)}
    >
      {value === null && <option value="">Choose a picture</option>}
      <Options choices={choices} />
    </select>
  );
}
