import { addressSection } from './addressSection.ts';
import { afterSection, type AfterSection } from './afterSection.ts';
import { correctionSection } from './correctionSection.ts';
import { html } from './markup.ts';
import { replacementSection } from './replacementSection.ts';
import { replySection } from './replySection.ts';
import { refusedWith, type ReportPart } from './reportPart.ts';
import { statusOf } from './reportStatus.ts';
import { withdrawalSection } from './withdrawalSection.ts';

const sections: readonly AfterSection[] = [
  correctionSection,
  replySection,
  withdrawalSection,
  replacementSection,
  addressSection,
];

const heading = 'After publication';

/** What can be done with a report once readers have seen it, and the addresses at which they find it. */
export const afterPart: ReportPart = {
  id: 'after',
  heading,
  besideLivePage: true,
  done: Object.assign({}, ...sections.map(({ done }) => done)),
  page: (shown) => {
    const status = statusOf(shown.report);
    const isSeen = ['published', 'withdrawn', 'superseded'].includes(status);
    return html`<p class="${isSeen ? 'note' : 'notice'}">${standing[status] ?? forLater}</p>
      ${sections.map((section) => afterSection(section, shown, isSeen || section === addressSection))}`;
  },
  change: (report, submitted, today) => {
    const [word = '', place = ''] = (submitted['do']?.[0] ?? '').split(' ');
    const section = sections.find(({ acts }) => Object.hasOwn(acts, word));
    const act = section?.acts[word];
    if (section === undefined || act === undefined)
      return refusedWith('Nothing was written: this page has no such button.');
    const status = statusOf(report);
    if (section !== addressSection && standing[status] === undefined) return refusedWith(forLater);
    if (status === 'withdrawn' && [correctionSection, replySection].includes(section))
      return refusedWith('Nothing was written: this report is withdrawn. Publish it again first.');
    return act({ report, submitted, today, entry: /^\d{1,6}$/.test(place) ? Number(place) : null });
  },
};

/** Where a report stands that readers have seen. */
const standing: Readonly<Record<string, string>> = {
  published: 'This report is published.',
  withdrawn: 'This report is withdrawn.',
  superseded: 'This report is replaced by a newer one.',
};

const forLater =
  'This report is a draft, and no reader has seen it: change what you like under “Answers and words”. What stands here is ' +
  'for later, once it is published.';
