'use client';

import { useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { useIdInAddress } from '@/app/_documents/useIdInAddress';
import { NotHere } from '@/app/_keeping/NotHere';
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
  const undoes = removed !== null && workspace.undoLabel === removed;
  const customer = workspace.customers[customerId];
  if (customer === undefined)
    return (
      <NotHere
        {...{ workspace, id: customerId }}
        what="customer"
        isRemoved={undoes}
        line="They were removed, or are kept on another device. If you have just removed them, undo brings them back."
        aside={undoes && <Button onPress={() => void workspace.undo()}>Bring them back</Button>}
        back={{ href: '/customers', words: 'To the customers' }}
      />
    );
  if (customer.erasedOn !== null)
    return <ErasedCustomer {...{ customerId, workspace }} erasedOn={customer.erasedOn} />;
  return <CustomerEditor {...{ customerId, customer, workspace }} onRemoved={setRemoved} />;
}
