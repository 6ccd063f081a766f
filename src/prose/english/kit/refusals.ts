import type { Telling } from '../../telling.ts';

/** Why a chart is drawn on its page and not given away. */
type RefusalReason = 'spread-told-apart' | 'part-named' | 'luck-agrees-with-answer';

/** The reason in a sentence; it names what the chart would need. */
export function sayRefusal(reason: RefusalReason, { noun }: Telling): string {
  switch (reason) {
    case 'spread-told-apart':
      return `We cannot tell that one ${noun} was more consistent than another; alone, the chart would look as if we could.`;
    case 'part-named':
      return 'The difference is too small to split reliably; alone, the chart would look as if we could.';
    case 'luck-agrees-with-answer':
      return 'Chance alone is a rough yardstick, and here it does not point the way of the answer; alone, the chart would contradict it.';
  }
}
