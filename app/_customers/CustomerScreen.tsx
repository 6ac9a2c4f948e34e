'use client';

import Link from 'next/link';
import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { PageHead } from '@/app/_controls/PageHead';
import { useIdInAddress } from '@/app/_documents/useIdInAddress';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { CustomerEditor } from './CustomerEditor';
import { ErasedCustomer } from './ErasedCustomer';

/** The customer that the address names. */
export const CustomerOfAddress = () => <CustomerScreen customerId={useIdInAddress('/customers/')} />;

/** One customer: who they are, where bills and goods go, what they ordered. */
export function CustomerScreen({ customerId }: Readonly<{ customerId: string }>) {
  return (
    <WithWorkspace>
      {(workspace) => <CustomerHere key={customerId} customerId={customerId} workspace={workspace} />}
    </WithWorkspace>
  );
}

// Helpers

type CustomerHereProps = Readonly<{ customerId: string; workspace: ReadyWorkspace }>;

function CustomerHere({ customerId, workspace }: CustomerHereProps) {
  const [removed, setRemoved] = useState<string | null>(null);
  const customer = workspace.customers[customerId];
  if (customer === undefined)
    return (
      <GoneCustomer
        {...{ customerId, workspace }}
        undoes={removed !== null && workspace.undoLabel === removed}
      />
    );
  if (customer.erasedOn !== null)
    return <ErasedCustomer {...{ customerId, workspace }} erasedOn={customer.erasedOn} />;
  return <CustomerEditor {...{ customerId, customer, workspace }} onRemoved={setRemoved} />;
}

function GoneCustomer({ customerId, workspace, undoes }: CustomerHereProps & Readonly<{ undoes: boolean }>) {
  const records = workspace.unreadable.filter(({ id }) => id === customerId);
  return (
    <>
      <PageHead
        title={
          records.length > 0
            ? 'This customer cannot be read'
            : undoes
              ? 'This customer is removed'
              : 'This customer is not here'
        }
        line={
          records.length > 0
            ? 'The record stays kept as it is. Save it as a file, so that nothing of it is lost.'
            : 'They were removed, or are kept on another device. If you have just removed them, undo brings them back.'
        }
        aside={undoes && <Button onPress={() => void workspace.undo()}>Bring them back</Button>}
      />
      <UnreadableRecords workspace={{ ...workspace, unreadable: records }} level={2} />
      <p>
        <Link href="/customers">To the customers</Link>
      </p>
    </>
  );
}
