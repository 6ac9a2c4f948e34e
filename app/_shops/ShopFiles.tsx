import { Attachments } from '@/app/_attachments/Attachments';
import type { Shop } from '@/shared/schemas/shop';
import type { ShopOnScreen } from './shopOnScreen';

/** Papers of a shop, such as what was agreed. */
export function ShopFiles({ on: { workspace, shopId, shop } }: Readonly<{ on: ShopOnScreen }>) {
  const change = (to: (now: Shop['attachments']) => Shop['attachments']) => ({
    ...({ do: 'change', kind: 'shop', id: shopId } as const),
    to: (now: Shop): Shop => ({ ...now, attachments: to(now.attachments) }),
  });
  return (
    <Attachments
      attachments={shop.attachments}
      purposes={['other']}
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
  );
}
