'use client';

import type { PlacementProps } from '@/app/_docket/common/placementProps';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { useArtworkChoice } from './useArtworkChoice';

/** Which picture is printed: one that is there, or a new one. */
export function ArtworkChoice(part: PlacementProps) {
  const { own, value, choices, onCommit } = useArtworkChoice(part);
  return <ChoiceField {...own} {...{ value, choices, onCommit }} />;
}
