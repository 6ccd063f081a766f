/** Five invented heads hit eight times in changing order: an eighth of a yard apart for each place, as no device would. */
const heads = ['Alder 9', 'Birch 9', 'Cedar 9', 'Dogwood 9', 'Elm 9'] as const;

/** Differences of the single shots, in yards. */
const wobble = [2.1, -3.4, 0.6, -1.2, 3.3, -0.4, 1.7, -2.6];

/** A session file of a monitor that names what was hit, with carries in yards. */
export const fiveHeadsCsv = [
  'Shot,Head,Club Speed (mph),Ball Speed (mph),Carry (yd)',
  ...wobble.flatMap((off, round) =>
    heads.map((_, place) => {
      const index = (place * 2 + round) % heads.length;
      const ball = 137 + index * 1.1 + off / 4;
      const carry = 221.5 + index * 3.6 + off + (place % 2 === 0 ? 0.8 : -0.7);
      return [
        round * heads.length + place + 1,
        heads[index],
        (94.2 + off / 9).toFixed(1),
        ball.toFixed(1),
        carry.toFixed(1),
      ].join(',');
    }),
  ),
  '',
].join('\n');
