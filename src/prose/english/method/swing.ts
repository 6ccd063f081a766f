import type { MethodSection } from './section.ts';

/** How the swing is compared, and what a difference in it is worth. */
export const swing: MethodSection = {
  id: 'swing',
  title: 'The swing',
  blocks: () => [
    'A golfer may swing one club faster or straighter than the next. We compare club speed, attack angle, club path ' +
      'and face to path, as far as they were measured. Then we ask what each difference could be worth in ' +
      'distance. Our flight model says so or, without it, rules of thumb that have no source.',
    'We print "the same swing" only if no difference could be worth half of M, and "not the same" only if one surely ' +
      'is. Where path or face points elsewhere, the ball goes to the side too, so these two have a price in carry and one to the side. ' +
      'Mostly we cannot tell. Where a file lacks a column that the price needs, the answer is "not known"; we never ' +
      'take it as nothing.',
    'The difference at equal club speed is a second line and never the first: club speed is partly the doing of the ' +
      'club.',
  ],
};

/** What the flight model can and cannot do. */
export const flight: MethodSection = {
  id: 'flight',
  title: 'The flight model',
  blocks: ({ distance, system }) => [
    'Our model flies a ball through air with weight, drag, lift, fading spin and wind. Drag and lift come from three ' +
      'published sets of tests. We know these from copies and have not seen the originals. Where a file has carries, ' +
      'we scale the drag so that the average carry of the model is the average in the file. That factor also takes up ' +
      'weather that nobody wrote down; it says nothing about the ball. Outside 0.88 to 1.05 we call the weather ' +
      'or the data unusual. Coefficients, drag factor and air stand under modelledWith in findings.json.',
    `A carry from the model may be off by 6%, or by ${distance(5)} once it is scaled to such shots. A difference ` +
      `under ${distance(5)} from the model is never called a finding. With about 650 rpm less spin, the trade ` +
      `reports drives that carry ${distance(7)} farther; the model does not show that. So what it gives to spin is ` +
      'called not settled unless it is larger than this error. For irons and wedges only one set was tested at such ' +
      'spin, and the end of a wedge shot lies beyond every test. Run after landing is a guess from filmed bounces on ' +
      'turf; firm ground can double it.',
    `"Where do the ${system} come from?" splits a difference in carry over what differed at launch. No order of ` +
      'swapping is favoured. A part is settled only if all three sets agree on its sign and no range reaches 0. What ' +
      'the model does not give is shown as not explained. We do this only from eight shots up, and only where the ' +
      'club or ball may be named as the cause.',
  ],
};
