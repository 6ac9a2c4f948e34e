import { mostEntries, numberLimits, textLimits } from '@/shared/limits';
import { blankSchema } from '@/shared/schemas/blank';
import { jobSchema, recipeSchema } from '@/shared/schemas/job';

numberLimits(blankSchema, ['sizes', 0, 'wrap', 'taperDegrees']);
textLimits(jobSchema, ['lines', 0, 'name']);
mostEntries(jobSchema, ['lines']);

// @ts-expect-error a recipe has no such field
numberLimits(recipeSchema, ['dwellMinutes']);

// @ts-expect-error nor is there one beneath a number
numberLimits(recipeSchema, ['dwellSeconds', 'value']);

// @ts-expect-error a name is no number
numberLimits(jobSchema, ['name']);

// @ts-expect-error the path ends before the number
numberLimits(recipeSchema, ['temperature']);

// @ts-expect-error a number is no text
textLimits(recipeSchema, ['dwellSeconds']);

// @ts-expect-error a line is no list
mostEntries(jobSchema, ['lines', 0]);
