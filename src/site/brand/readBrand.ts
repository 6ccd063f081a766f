import type { BrandAnswers } from '../../intake/authored/brand.ts';
import type { PlaceOf } from '../../intake/authored/places.ts';
import type { Problem } from '../../problems/problem.ts';
import type { ContentFolder } from '../contentFiles.ts';
import { accentProblems } from './accent.ts';
import type { Brand } from './brand.ts';
import { logoSeenProblems } from './logoSeen.ts';
import { readLogo } from './readLogo.ts';

/** What pages show of the shop's own, with its files read and cleaned, and what is wrong with it. */
export function readBrand(
  folder: ContentFolder,
  { logo, logoDark, accent, site, booking, contact }: BrandAnswers,
  placeOf: PlaceOf,
): { readonly brand: Brand; readonly problems: readonly Problem[] } {
  const own = logo === undefined ? null : readLogo(folder, logo, placeOf(['brand', 'logo']));
  const dark = logoDark === undefined ? null : readLogo(folder, logoDark, placeOf(['brand', 'logo_dark']));
  const onDark = dark?.logo ?? own?.logo ?? null;
  const brand: Brand = {
    logo: own?.logo ?? null,
    logoDark: dark?.logo ?? null,
    accent: accent ?? null,
    site: site ?? null,
    booking: booking ?? null,
    contact: contact ?? null,
  };
  return {
    brand,
    problems: [
      ...(own?.problems ?? []),
      ...(dark?.problems ?? []),
      ...(brand.logo === null ? [] : logoSeenProblems(brand.logo, 'light', placeOf(['brand', 'logo']))),
      ...(onDark === null
        ? []
        : logoSeenProblems(onDark, 'dark', placeOf(['brand', dark === null ? 'logo' : 'logo_dark']))),
      ...(accent === undefined ? [] : accentProblems(accent, placeOf)),
    ],
  };
}
