import { fieldIdOf } from '@/app/_docket/common/fieldId';
import { workshopFieldId } from '@/app/_documents/fieldAddress';
import type { SettingShower } from '@/app/_trace/showSetting';
import type { Where } from '@/shared/finding';
import type { Job } from '@/shared/schemas/job';

/** @returns how opened figures lead to the fields of a docket, the workshop's own rows among them. */
export function settingShower(job: Job, show: (fieldId: string) => void): SettingShower {
  const idOf = (where: Where): string | null =>
    where.document === 'workshop' && where.path[0] === 'ownRows'
      ? workshopFieldId(where.path)
      : fieldIdOf(where, job);
  return {
    isHere: (where) => idOf(where) !== null,
    show: (where) => {
      const id = idOf(where);
      if (id !== null) show(id);
    },
  };
}
