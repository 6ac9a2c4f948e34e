import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { paperNumberText } from '@/app/_words/paperNumberText';
import { listFileWords } from '@/app/_words/priceLists/listFileWords';
import { ownListTable, ownListWords } from '@/app/_words/priceLists/ownListWords';
import type { PriceList, PriceListVersion } from '@/shared/schemas/priceList';
import { ListFile } from './ListFile';
import { ownListSource } from './listSources';
import styles from './PriceLists.module.css';

type OwnerFiguresProps = Readonly<{
  version: PriceListVersion;
  page: PriceList['paper'];
  workspace: ReadyWorkspace;
}>;

/** What each price leaves where it leaves least: for the maker's eyes, never on the paper. */
export function OwnerFigures({ version, page, workspace }: OwnerFiguresProps) {
  const { workshop } = workspace;
  const { columns, rows } = ownListTable(version, workshop);
  return (
    <section className={styles.part} aria-labelledby="owner-heading">
      <h2 id="owner-heading">{ownListWords.heading}</h2>
      <p className={styles.words}>
        {version.title}, {ownListWords.version} {paperNumberText(version.number)}. {ownListWords.says}
      </p>
      <ListFile
        workspace={workspace}
        source={ownListSource({ version, page }, workshop)}
        spoken={listFileWords.ownSpoken}
      />
      <section
        className={styles.owner}
        aria-label={ownListWords.table}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls is reached by the keyboard too
        tabIndex={0}
      >
        <table>
          <thead>
            <tr>
              {columns.map(({ head }) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(([name, ...cells]) => (
              <tr key={`${name} ${cells.join(' ')}`}>
                <th scope="row">{name}</th>
                {cells.map((text, at) => (
                  <td key={columns[at + 1]?.head}>{text}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </section>
  );
}
