import { dayOf } from './dayOf';

/** @returns what the clock of this device shows at a moment: the day, YYYY-MM-DD, and minutes since its midnight. */
export function wallAt(at: number): { readonly day: string; readonly minute: number } {
  const moment = new Date(at);
  return { day: dayOf(moment), minute: moment.getHours() * 60 + moment.getMinutes() };
}
