import { comment, ask } from './ask.ts';
import { draftClasses } from './draftColumns.ts';
import type { Conditions } from '../authored/conditions.ts';
import type { ShotColumn } from '../shots/shotFile.ts';

interface Facts {
  readonly columns: readonly ShotColumn[];
  /** What the shop answers for all its reports. */
  readonly byShop: Conditions;
  readonly varied: string | null;
}

/** The block `conditions`, without what the shop has answered for all reports. */
export function draftConditions({ columns, byShop, varied }: Facts): readonly string[] {
  const line = (key: keyof Conditions, question: string): readonly string[] =>
    byShop[key] === undefined ? ask({ key, question, indent: 2 }) : [];
  const answered = Object.keys(byShop);
  return [
    ...comment('Where and in front of what it was hit.'),
    ...(answered.length === 0
      ? []
      : comment(`shop.yaml answers for all reports: ${answered.join(', ')}. Write here only what differed.`)),
    'conditions:',
    ...line('place', 'Indoors or outdoors, and where, such as indoors, net at 4 m?'),
    ...line('surface', 'Mat, turf or other ground?'),
    ...line('tee', 'Tee height, or off the mat?'),
    ...line('temperature', 'The temperature with its unit, such as 21 °C?'),
    ...line('altitude', 'The altitude with its unit, such as 120 m?'),
    ...line('wind', 'The wind, or none?'),
    ...line('humidity', 'The humidity?'),
    ...line('target', 'What did the hitter aim at?'),
    ...(byShop.ball === undefined && !/\bball\b/.test(varied ?? '') ? ball() : []),
    ...(byShop.monitor === undefined ? monitor(columns) : []),
  ];
}

function ball(): readonly string[] {
  const line = (key: string, question: string): readonly string[] => ask({ key, question, indent: 4 });
  return [
    '  ball:',
    ...line('model', 'Which ball, or "withheld" and why?'),
    ...line('state', 'New, used or range ball?'),
    ...line('same_for_all', 'Was it the same model for every shot: yes or no?'),
  ];
}

function monitor(columns: readonly ShotColumn[]): readonly string[] {
  const line = (key: string, question: string): readonly string[] => ask({ key, question, indent: 4 });
  return [
    '  monitor:',
    ...line('kind', 'Radar, camera, both or a club sensor?'),
    ...line('stated_accuracy', 'How accurate is it said to be, such as {ball_speed: 1 mph, carry: 3 yd}?'),
    ...line('accuracy_stated_by', 'Who says so?'),
    ...line('flight', 'Was the flight seen, or did a net stop the ball, and at which distance?'),
    ...line('normalised_to', 'To which air and ball does it correct distances, or nothing?'),
    ...line('last_check', 'When was it last checked?'),
    ...draftClasses(columns),
  ];
}
