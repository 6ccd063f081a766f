import { absoluteAddress } from '../kit/absoluteAddress.ts';
import { emailParts, type EmailParts } from '../kit/emailParts.ts';
import type { Report } from '../kit/report.ts';
import { givingPaths, type ReportPath } from './kitPaths.ts';

/** Paths of the e-mail editions; none while the site has no address, which every link and image in a mail needs. */
export function emailPaths(of: { readonly dev: boolean }): ReportPath[] {
  return givingPaths(of).filter(({ props: { report } }) => absoluteAddress(report.source.shop) !== null);
}

/** What the mail of such a report says. */
export function emailOf(report: Report): EmailParts {
  const absolute = absoluteAddress(report.source.shop);
  if (absolute === null) throw new Error('A mail needs the address of the site.');
  return emailParts(report, absolute);
}
