'use client';

import { useRouter } from 'next/navigation';
import { useMemo, useState } from 'react';
import { Button } from '@/app/_controls/Button';
import { Disclosure } from '@/app/_controls/Disclosure';
import sheet from '@/app/_controls/ListSheet.module.css';
import { PageHead } from '@/app/_controls/PageHead';
import { newId } from '@/app/_documents/newId';
import { Finder } from '@/app/_fields/Finder';
import { UnreadableRecords } from '@/app/_keeping/UnreadableRecords';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { useOrderBook } from '@/app/_orderBook/useOrderBook';
import { foundWords } from '@/app/_words/customers/customerWords';
import { formatterFor } from '@/app/_words/formatter';
import { customerSchema } from '@/shared/schemas/customer';
import { CustomerLine } from './CustomerLine';
import styles from './Customers.module.css';
import { customersFound, ordersByCustomer } from './customerOrders';
import { NewCustomer } from './NewCustomer';

/** Everyone who orders. */
export function CustomersScreen() {
  return <WithWorkspace>{(workspace) => <Customers workspace={workspace} />}</WithWorkspace>;
}

// Helpers

function Customers({ workspace }: Readonly<{ workspace: ReadyWorkspace }>) {
  const router = useRouter();
  const formatter = formatterFor(workspace.workshop);
  const { customers } = workspace;
  const { board } = useOrderBook(workspace);
  const [search, setSearch] = useState('');
  const [isNew, setNew] = useState(false);
  const sorted = useMemo(() => ordersByCustomer(board), [board]);
  const found = useMemo(() => customersFound(customers, sorted, search), [customers, sorted, search]);
  const here = found.filter(({ customer }) => customer.erasedOn === null);
  const erased = found.filter(({ customer }) => customer.erasedOn !== null);
  const all = Object.values(customers).filter(({ erasedOn }) => erasedOn === null).length;
  const add = (name: string) => {
    const id = newId();
    if (workspace.addCustomer(id, customerSchema.parse({ name })).state === 'shown')
      router.push(`/customers/${id}`);
  };
  return (
    <>
      <PageHead
        title="Customers"
        line="Who orders, whom to write to, and what they ordered."
        aside={
          <Button kind="strong" expanded={isNew} onPress={() => setNew(!isNew)}>
            New customer
          </Button>
        }
      />
      {isNew && <NewCustomer customers={customers} onAdd={add} onLeave={() => setNew(false)} />}
      <UnreadableRecords
        workspace={{
          ...workspace,
          unreadable: workspace.unreadable.filter(({ kind }) => kind === 'customer'),
        }}
        level={2}
      />
      <div className={sheet.card}>
        {all > 0 && (
          <div className={styles.finder}>
            <Finder
              id="customers-search"
              label="Find a name, a number or an order"
              text={search}
              onText={setSearch}
              result={search.trim() !== '' && foundWords(here.length, formatter)}
            />
          </div>
        )}
        {all === 0 && <p className={styles.none}>Nobody yet. An enquiry adds its customer here by itself.</p>}
        <ul className={styles.list}>
          {here.map((row) => (
            <CustomerLine key={row.id} row={row} formatter={formatter} />
          ))}
        </ul>
        {erased.length > 0 && (
          <div className={styles.erased}>
            <Disclosure
              id="customers-erased"
              level={2}
              heading={formatter.count(erased.length, 'erased customer')}
            >
              <ul className={styles.list}>
                {erased.map((row) => (
                  <CustomerLine key={row.id} row={row} formatter={formatter} />
                ))}
              </ul>
            </Disclosure>
          </div>
        )}
      </div>
    </>
  );
}
