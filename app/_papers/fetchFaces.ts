import type { Face } from '@/lib/lettering/faceTable';
import { faceAddresses } from './faceAddresses';

/** Fetched before, in this worker. */
const here = new Map<Face, Uint8Array>();

/** @returns the files of the type that a paper needs. */
export async function fetchFaces(faces: readonly Face[]): Promise<ReadonlyMap<Face, Uint8Array>> {
  await Promise.all(
    faces.map(async (face) => {
      if (!here.has(face)) here.set(face, await fetchFace(face));
    }),
  );
  return new Map(faces.flatMap((face) => [...here].filter(([name]) => name === face)));
}

async function fetchFace(face: Face): Promise<Uint8Array> {
  const answer = await fetch(faceAddresses[face]);
  if (!answer.ok) throw new Error(`the type ${face} did not come (${answer.status})`);
  return new Uint8Array(await answer.arrayBuffer());
}
