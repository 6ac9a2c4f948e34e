import { Button } from '@/app/_controls/Button';
import { CardSection } from '@/app/_controls/CardSection';
import { docketSections } from '@/app/_words/docket/docketSections';

/** The first section that shows figures. */
const FIRST = 3;

/** While a stop stands: the headings of the figures, and what they wait for. */
export function WaitingSections({ onLook }: Readonly<{ onLook: (() => void) | null }>) {
  return (
    <>
      {docketSections.slice(FIRST - 1).map(({ id, name }, index) => (
        <CardSection key={id} numeral={FIRST + index} heading={name} id={`${id}-waits`}>
          <p>Waits for the stop under “Checks”.</p>
          {index === 0 && onLook !== null && (
            <Button kind="quiet" onPress={onLook}>
              Show the figures from before it
            </Button>
          )}
        </CardSection>
      ))}
    </>
  );
}
