import { isRealDate } from '../intake/authored/answers.ts';

/** Why a day that has not come is refused; null for one that has, and for what is no day, which is told otherwise. */
export const notYet = (day: string | undefined, today: string): string | null =>
  day !== undefined && isRealDate(day) && day > today
    ? 'Nothing was written: that day has not come yet. Look at year and month.'
    : null;
