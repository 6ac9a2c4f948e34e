'use client';

import { Button } from '@/app/_controls/Button';
import { reopening } from './reopening';
import { TryAgain } from './TryAgain';
import styles from './TryAgain.module.css';
import type { Fetched } from './useLazy';

type PartMissingProps = Readonly<{
  /** “The figures”. */
  what: string;
  /** What can be done without it, as a sentence. */
  meanwhile?: string;
  missing: Extract<Fetched<unknown>, { readonly kind: 'missing' }>;
}>;

/** Stands where a part of the page could not be fetched. */
export function PartMissing({ what, meanwhile, missing }: PartMissingProps) {
  if (missing.isGone) return <PartGone {...{ what, meanwhile }} />;
  return (
    <TryAgain failure={missing} onAgain={missing.again}>
      {what} could not be fetched. {meanwhile} It comes by itself once there is a network.
    </TryAgain>
  );
}

// Helpers

type PartGoneProps = Readonly<{ what: string; meanwhile: string | undefined }>;

function PartGone({ what, meanwhile }: PartGoneProps) {
  const wasTried = reopening.wasTried();
  return (
    <div className={styles.missing} role="alert">
      <p>
        {what} could not be fetched: the server has a newer version, and no longer this part. {meanwhile}{' '}
        {wasTried
          ? 'Opening the page anew did not help. What you typed is kept; try again later.'
          : 'Open the page anew to get it; what you typed is kept.'}
      </p>
      {!wasTried && <Button onPress={reopening.now}>Open it anew</Button>}
    </div>
  );
}
