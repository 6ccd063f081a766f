import { palette } from '../charts/palette.ts';
import { roomIn, type PictureForm } from './pictureForm.ts';
import { drawnLines, sans, wrappedWithoutWidow } from './pictureLines.ts';
import type { Piece } from './pictureStamp.ts';
import { textOf, type Said, type SaidKind } from './said.ts';

/** Lines of one look. */
interface Paragraph {
  readonly colour: string;
  readonly lines: readonly string[];
}

/** What must be seen stands in ink. */
const weighty: readonly SaidKind[] = ['caution', 'interest'];

function lookOf({ kind }: Said): 'weighty' | 'address' | 'plain' {
  if (kind === 'credit') return 'address';
  return weighty.includes(kind) ? 'weighty' : 'plain';
}

/** Sentences as paragraphs in their order: cautions and interest in ink, the address on lines of its own. */
function paragraphs(sentences: readonly Said[], form: PictureForm): readonly Paragraph[] {
  const type = sans(form.strip.size, 400);
  const runs: Said[][] = [];
  for (const sentence of sentences) {
    const run = runs.at(-1);
    const [before] = run ?? [];
    if (run !== undefined && before !== undefined && lookOf(before) === lookOf(sentence)) run.push(sentence);
    else runs.push([sentence]);
  }
  return runs.map((run) => ({
    colour: run.some((sentence) => lookOf(sentence) === 'weighty')
      ? palette.ink.light
      : palette['ink-2'].light,
    lines: wrappedWithoutWidow(textOf(run), type, roomIn(form)),
  }));
}

/** How many lines the sentences of a strip take, its address apart. */
export function linesOfStrip(sentences: readonly Said[], form: PictureForm): number {
  const told = sentences.filter((sentence) => lookOf(sentence) !== 'address');
  return paragraphs(told, form).reduce((lines, paragraph) => lines + paragraph.lines.length, 0);
}

/** The strip under a chart, its rule at `top`. */
export function pictureStrip(sentences: readonly Said[], form: PictureForm, top: number): Piece {
  const { size, leading } = form.strip;
  const rule = `<path d="M${form.margin},${top}H${form.width - form.margin}" stroke="${palette.rule.light}" stroke-width="1"/>`;
  let y = top + 10;
  const drawn = paragraphs(sentences, form).map(({ colour, lines }) => {
    const paragraph = drawnLines(lines, sans(size, 400), { x: form.margin, y: y + size, leading, colour });
    y += lines.length * leading;
    return paragraph;
  });
  return { height: y - top, svg: rule + drawn.join('') };
}
