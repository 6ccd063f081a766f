import type { OverlayId, StatusId } from '../../../findings/findings.ts';
import { quoted } from '../answerWords.ts';
import type { MethodTelling, WordTable } from './section.ts';

const becomes = (status: StatusId): string => `The answer becomes ${quoted(status)}`;
const causeUnclear = `${becomes('cause-unclear')}, or ${quoted('cannot-tell')} if none was seen.`;
const besideAnswer = 'The answer stays, and the caution stands beside it.';
const noClaim = `${besideAnswer} No claim about it can be more than "not shown".`;

/** When each caution is due and what it does to an answer. */
const cautionsIn = ({
  distance,
}: MethodTelling): Readonly<Record<OverlayId, readonly [when: string, does: string]>> => ({
  'one-after-another': ['All shots with one came before those with the next.', causeUnclear],
  'order-unknown': ['Nobody knows the order of the shots.', causeUnclear],
  'order-lever': ['On the whole, one was hit a quarter of the test later than the other.', causeUnclear],
  'order-drift': ['Results drifted, by enough to move a difference by half of M.', causeUnclear],
  'order-few-visits': ['Each was hit in fewer than three spells.', causeUnclear],
  'visits-alike': [
    'Shots of one spell are alike, and with each spell counted as one the difference is not sure.',
    `${becomes('cannot-tell')}.`,
  ],
  leans: ['Two of our checks, or the only one, do not confirm the answer.', `${becomes('not-confirmed')}.`],
  'few-shots': [
    'There are few shots of either.',
    'With fewer than eight the answer begins "On a first look"; below ten the page says that they are few.',
  ],
  'depends-on-left-out': ['With the shots counted that were left out, the answer is another one.', noClaim],
  'mixed-with-swing': ['The swing differed, by enough to make the difference.', noClaim],
  'rests-on-one-shot': ['Without one shot far from the others, we could not tell.', noClaim],
  'near-device': ['The difference is hardly larger than the error stated for the monitor.', noClaim],
  'modelled-reading': [
    'The number was calculated, not measured.',
    `The answer says so. A calculated distance heads a page only from ${distance(5)} up, or with those words.`,
  ],
  'uneven-readings': ['Readings are missing more often for one than for the other.', noClaim],
  'matters-unusual': [
    'M is under a third of our usual value, or over three times as much.',
    `${besideAnswer} It says who set M, and whether that was before the session.`,
  ],
  'found-too-big': [
    'The test was too short to find M half of the time.',
    'The page says that such tests tend to overstate the differences they find.',
  ],
  'not-planned': [
    'The measure was not chosen before hitting.',
    'It never heads a page; the page says how many measures we looked at, and how many would differ by chance.',
  ],
  'golfers-apart': [
    'Two to five golfers hit, and their differences do not all lie within M, or differ from one another.',
    `The answer cannot be ${quoted('level')}; each golfer is told.`,
  ],
  'one-hitter': ['One golfer hit.', 'Every sentence that can stand alone says so.'],
  'few-hitters': ['Two to five golfers hit.', 'The answer is for these golfers only, and says so.'],
  'one-example': ['One example of each was hit.', 'The page says that another example may differ.'],
});

/** What each caution does, by its id. */
export const cautionTable = (telling: MethodTelling): WordTable => ({
  caption: 'What each caution does to an answer',
  head: ['Caution in findings.json', 'When', 'What it does'],
  idColumn: 0,
  rows: Object.entries(cautionsIn(telling)).map(([id, [when, does]]) => [id, when, does]),
});
