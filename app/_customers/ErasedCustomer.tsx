'use client';

import Link from 'next/link';
import { useMemo } from 'react';
import { Card } from '@/app/_controls/Card';
import { CardSection } from '@/app/_controls/CardSection';
import { PageHead } from '@/app/_controls/PageHead';
import { usePageName } from '@/app/_controls/usePageName';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { useOrderBook } from '@/app/_orderBook/useOrderBook';
import { erasedName, ordersAnswer } from '@/app/_words/customers/customerWords';
import { erasedWords } from '@/app/_words/customers/erasureWords';
import { paperText } from '@/app/_words/customers/paperText';
import { formatterFor } from '@/app/_words/formatter';
import styles from './Customers.module.css';
import { ordersByCustomer } from './customerOrders';
import { OrderLinks } from './OrderLinks';

type ErasedCustomerProps = Readonly<{ customerId: string; erasedOn: string; workspace: ReadyWorkspace }>;

/** What stands in the place of a customer who asked to be erased. */
export function ErasedCustomer({ customerId, erasedOn, workspace }: ErasedCustomerProps) {
  const { workshop, papers } = workspace;
  const { board } = useOrderBook(workspace);
  const formatter = formatterFor(workshop);
  const name = erasedName(erasedOn, formatter);
  usePageName(`${name} · Pressminute`);
  const own = useMemo(() => ordersByCustomer(board).get(customerId) ?? [], [board, customerId]);
  const ids = new Set([customerId, ...own.flatMap(({ id, order }) => [id, ...order.jobIds])]);
  const kept = Object.values(papers)
    .flat()
    .filter(({ about }) => ids.has(about.id))
    .map(paperText);
  const answer = ordersAnswer(own, formatter);
  return (
    <>
      <PageHead title={name} line="A customer who asked for it." />
      <Card>
        <CardSection id="erased" numeral={1} heading="What is left" answer={<strong>Nobody’s name</strong>}>
          <ul className={styles.told}>
            {erasedWords(kept, own.length).map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </CardSection>
        <CardSection
          id="orders"
          numeral={2}
          heading="Orders"
          answer={
            <>
              <strong>{answer.strong}</strong>
              {answer.rest}
            </>
          }
        >
          <OrderLinks orders={own} formatter={formatter} />
        </CardSection>
      </Card>
      <p>
        <Link href="/customers">To the customers</Link>
      </p>
    </>
  );
}
