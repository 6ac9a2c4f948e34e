'use client';

import { useJob } from '@/app/_docket/common/useJob';
import { ChoiceField } from '@/app/_fields/ChoiceField';
import { audienceWords } from '@/app/_words/choices/audienceWords';
import { audiences, type Line } from '@/shared/schemas/job';
import type { FieldPath } from '@/shared/setIn';

type LineAudienceProps = Readonly<{ line: Line; path: FieldPath }>;

const ANYBODY = 'anybody';

/** Whom the sizes are for, so that an unusual mix is noticed. */
export function LineAudience({ line, path }: LineAudienceProps) {
  const { field } = useJob();
  const audience = field('Sizes are for', [...path, 'audience'], `Audience of ${line.name}`);
  return (
    <ChoiceField<string>
      {...audience}
      value={line.audience ?? ANYBODY}
      choices={[
        { value: ANYBODY, label: 'not said' },
        ...audiences.map((value) => ({ value, label: audienceWords[value] })),
      ]}
      hint="An unusual mix of sizes is then noticed."
      onCommit={(value) => audience.onCommit(value === ANYBODY ? null : value)}
    />
  );
}
