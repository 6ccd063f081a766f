import type { MethodSection } from './section.ts';

/** From single shots to averages. */
export const shots: MethodSection = {
  id: 'shots',
  title: 'From shots to averages',
  blocks: () => [
    'Every figure starts from single shots. We do not use the averages that a monitor exports; rows that hold them ' +
      'are found and left aside. We never drop a shot because of where it went. Where a shop leaves a shot out, it ' +
      'stays in the data and in the charts. The page gives the rule and the reason, and we judge everything a ' +
      'second time with that shot counted.',
    'The average is the sum divided by the count. The spread, or sd, says how far shots usually lie from the ' +
      'average. The bar under a chart of shots is the likely range of that one average.',
    'Left and right are seen from behind the golfer. A plus is right of the target line, for right-handed and ' +
      'left-handed golfers alike.',
    'A file that rounds its numbers hides a little spread. We do not believe a spread smaller than that rounding ' +
      'could hide. Where a monitor gives one and the same number for every shot, we do not judge at all.',
  ],
};
