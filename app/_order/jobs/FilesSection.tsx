'use client';

import { Attachments } from '@/app/_attachments/Attachments';
import { OrderFindings } from '@/app/_order/bench/OrderFindings';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import type { Bench } from '@/app/_orderBook/useBench';
import { spelledNumber, withCapital } from '@/app/_words/spelledNumber';
import type { Order } from '@/shared/schemas/order';
import { FoldedPart } from './FoldedPart';
import styles from './Jobs.module.css';

const purposes = ['permission', 'approval', 'sample', 'receipt', 'other'] as const;

/** Files kept with the order, and what the law may ask about what is kept. */
export function FilesSection({ on, bench }: Readonly<{ on: OrderOnScreen; bench: Bench }>) {
  const { workspace, orderId, order } = on;
  const { attachments } = order;
  const change = (to: (now: Order['attachments']) => Order['attachments']) => ({
    ...({ do: 'change', kind: 'order', id: orderId } as const),
    to: (now: Order): Order => ({ ...now, attachments: to(now.attachments) }),
  });
  const count = attachments.length;
  const key =
    count === 0 ? 'No file' : `${withCapital(spelledNumber(count))} ${count === 1 ? 'file' : 'files'}`;
  return (
    <FoldedPart id="order-files" heading="Files" answer={{ key }}>
      <OrderFindings on={on} bench={bench} id="LAW-09" />
      <div className={styles.files}>
        <Attachments
          attachments={attachments}
          purposes={purposes}
          readFile={workspace.readFile}
          onAdd={(attachment, file) =>
            workspace.editWithFiles(attachment.fileName, [change((now) => [...now, attachment])], [file])
          }
          onRemove={({ fileId, purpose, fileName }) =>
            workspace.edit(`Remove ${fileName}`, [
              change((now) => now.filter((one) => one.fileId !== fileId || one.purpose !== purpose)),
            ])
          }
        />
      </div>
    </FoldedPart>
  );
}
