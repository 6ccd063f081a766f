import { absoluteAddress } from '../kit/absoluteAddress.ts';
import { emailParts, type EmailParts } from '../kit/emailParts.ts';
import { givingReports } from './kitPaths.ts';
import { version } from './version.ts';

export interface EmailPath {
  readonly params: { readonly slug: string };
  readonly props: { readonly parts: EmailParts };
}

/** Paths of the e-mail editions; none while the site has no address, which every link and image in a mail needs. */
export function emailPaths({ dev }: { readonly dev: boolean }): EmailPath[] {
  return givingReports({ dev }).flatMap((report) => {
    const absolute = absoluteAddress(report.source.shop);
    if (absolute === null) return [];
    return [
      { params: { slug: report.source.slug }, props: { parts: emailParts(report, absolute, version) } },
    ];
  });
}
