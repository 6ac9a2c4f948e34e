import { usePathname } from 'next/navigation';
import { ButtonLink } from '@/app/_controls/ButtonLink';
import { documentAddress } from '@/app/_documents/documentAddress';
import type { ArrivalPlan } from '@/lib/copies/arrival';

/** From a carried thing that came in on to its screen; a stall day whose plan was fixed also to its count, a run that was begun to the press. */
export function ArrivedLinks({ copy: { of, papers } }: Readonly<{ copy: ArrivalPlan['copy'] }>) {
  const path = usePathname();
  if (of === 'everything') return null;
  const address = documentAddress({ ...of, path: [] }, []);
  const isOpen =
    papers.some(({ kind }) => kind === 'stallPlan') && papers.every(({ kind }) => kind !== 'dayClose');
  return (
    <>
      {address !== null && address !== path && (
        <ButtonLink href={address} spoken={`Open ${of.name}`}>
          Open it
        </ButtonLink>
      )}
      {of.kind === 'stallDay' && isOpen && (
        <ButtonLink href={`/stall/${of.id}/count`} spoken={`Count sales of ${of.name}`}>
          Count sales
        </ButtonLink>
      )}
      {of.kind === 'run' && papers.some(({ kind }) => kind === 'runStandard') && (
        <ButtonLink
          href={`/making/${encodeURIComponent(of.id)}/press`}
          spoken={`To the press with ${of.name}`}
        >
          To the press
        </ButtonLink>
      )}
    </>
  );
}
