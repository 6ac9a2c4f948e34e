import type { ResolvedJob } from '@/lib/job/checkedJob';
import type { PlacementPlace } from '@/lib/job/places';
import { placementPlaces } from '@/lib/job/places';

/** Each artwork once, at the first placement that uses it. */
export function eachArtwork(job: ResolvedJob): readonly PlacementPlace[] {
  const places = placementPlaces(job);
  const idOf = (place: PlacementPlace) => place.placed.placement.artworkId;
  return places.filter((place, index) => places.findIndex((other) => idOf(other) === idOf(place)) === index);
}
