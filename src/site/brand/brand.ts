import type { Accent } from './accent.ts';

/** A logo as the site has it. */
export interface Logo {
  /** Its name on the site, of what it holds: `0123456789ab.svg`. */
  readonly name: string;
  /** As pages show it, CSS px. */
  readonly width: number;
  readonly height: number;
  /** A drawing, cleaned; or a picture, made anew by `publishedLogo`. */
  readonly content:
    { readonly kind: 'svg'; readonly svg: string } | { readonly kind: 'png'; readonly bytes: Uint8Array };
}

/** What pages show of the shop's own. */
export interface Brand {
  readonly logo: Logo | null;
  /** For the dark ground, where it is another one. */
  readonly logoDark: Logo | null;
  readonly accent: Accent | null;
  readonly site: string | null;
  readonly booking: string | null;
  readonly contact: string | null;
}

export const noBrand: Brand = {
  logo: null,
  logoDark: null,
  accent: null,
  site: null,
  booking: null,
  contact: null,
};

/** The logos of a brand, each file once. */
export function logosOf({ logo, logoDark }: Brand): readonly Logo[] {
  return [logo, logoDark].filter((one): one is Logo => one !== null);
}

/** A path of the site. */
export const logoPath = ({ name }: Logo): string => `/brand/${name}`;
