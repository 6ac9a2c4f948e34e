import type { Rule } from '@/lib/check/rule';
import { makeFinding } from '@/lib/findings/makeFinding';
import { placementPlaces } from '@/lib/job/places';
import type { Change } from '@/shared/finding';
import type { Habits } from '@/shared/schemas/habits';
import { thresholds } from '@/shared/tables/thresholds';

const habit = (key: keyof Habits, value: boolean): readonly Change[] => [
  { document: 'workshop', path: ['habits', key], value },
];

/** ELE-02: a press on an extension lead. What nobody has told yet is asked, see `workshopQuestions`. */
const lead: Rule = ({ resolved: { workshop } }) =>
  workshop.habits.extensionLead === true
    ? [
        makeFinding({
          id: 'ELE-02',
          severity: 'caution',
          where: { document: 'workshop', path: ['habits', 'extensionLead'] },
          facts: {},
          fix: { label: 'intoWall', facts: {}, changes: habit('extensionLead', false) },
        }),
      ]
    : [];

/** SAF-02: a hot press that works alone for long, with nobody said to stay by it. */
const aloneWithPress: Rule = ({ resolved }) =>
  placementPlaces(resolved).flatMap((place) => {
    const minutes = place.placed.aloneMinutes.value;
    const most = thresholds.alone.value;
    if (minutes <= most + 1e-9 || resolved.workshop.habits.staysByPress === true) return [];
    return [
      makeFinding({
        id: 'SAF-02',
        severity: 'caution',
        where: place.where('aloneMinutes'),
        found: { value: minutes, unit: 'min' },
        limit: { value: most, unit: 'min' },
        facts: { placement: place.placed.placement.name, minutes, most },
        fix: { label: 'stayByPress', facts: {}, changes: habit('staysByPress', true) },
      }),
    ];
  });

/** SAF-03: the papers about ink and coatings are not at hand. */
const safetySheets: Rule = ({ resolved: { workshop } }) =>
  workshop.habits.safetySheets === false
    ? [
        makeFinding({
          id: 'SAF-03',
          severity: 'note',
          where: { document: 'workshop', path: ['habits', 'safetySheets'] },
          facts: {},
          fix: { label: 'sheetsKept', facts: {}, changes: habit('safetySheets', true) },
        }),
      ]
    : [];

export const benchSafetyRules: readonly Rule[] = [lead, aloneWithPress, safetySheets];
