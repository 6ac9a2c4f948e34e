'use client';

import { useEffect, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { FileActions } from '@/app/_papers/FileActions';
import { WithdrawForm } from '@/app/_papers/WithdrawForm';
import type { SentOrder, SupplyOnScreen } from '@/app/_supply/supplyOnScreen';
import { withdrawnOrderTold } from '@/app/_words/supply/supplyOrderWords';
import { orderNumberText } from '@/shared/orderNumberText';

type SentOrderActsProps = Readonly<{ supply: SupplyOnScreen; order: SentOrder }>;

/** What can be done with an order that went out: sent, saved, withdrawn. */
export function SentOrderActs({ supply: { workspace }, order }: SentOrderActsProps) {
  const { readFile, withdraw } = workspace;
  const [isAsking, setAsking] = useState(false);
  const [content, setContent] = useState<Blob | 'lost' | null>(null);
  const name = `Order ${orderNumberText(order.body.number)}`;
  const id = order.file?.sha256 ?? null;
  useEffect(() => {
    if (id === null) return setContent('lost');
    let isStale = false;
    void readFile(id).then((file) => {
      if (!isStale) setContent(file?.content ?? 'lost');
    });
    return () => {
      isStale = true;
    };
  }, [id, readFile]);
  return (
    <>
      <FileActions
        name={order.file?.name ?? `${name}.pdf`}
        content={content instanceof Blob ? content : null}
        spoken={name}
        blockedBy={content === 'lost' ? 'The file is not on this device any more.' : undefined}
      />
      {!order.withdrawn && !isAsking && (
        <Button kind="quiet" spoken={`Withdraw ${name}`} onPress={() => setAsking(true)}>
          Withdraw
        </Button>
      )}
      {!order.withdrawn && isAsking && (
        <WithdrawForm
          name={name}
          told={[withdrawnOrderTold]}
          onLeave={() => setAsking(false)}
          onWithdraw={(why) => {
            void withdraw(`Withdraw ${name}`, order.id, why);
            setAsking(false);
          }}
        />
      )}
    </>
  );
}
