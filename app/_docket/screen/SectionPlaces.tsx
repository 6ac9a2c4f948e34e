import { CardPlace } from '@/app/_controls/CardSection';
import { docketSections, type SectionId } from '@/app/_words/docket/docketSections';
import styles from './SectionPlaces.module.css';

/** Keeps the room of sections that are not drawn yet, so that those under them stand still when they are. */
export function SectionPlaces({ of }: Readonly<{ of: readonly SectionId[] }>) {
  return docketSections.map(
    ({ id, name }, index) =>
      of.includes(id) && (
        <CardPlace
          key={id}
          numeral={index + 1}
          heading={name}
          id={`${id}-waits`}
          className={styles[id] ?? ''}
        />
      ),
  );
}
