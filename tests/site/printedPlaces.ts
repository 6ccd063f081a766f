import type { Page, PaperFormat } from 'puppeteer-core';

/** Where the parts of one figure are printed: numbers of sheets, from 0. */
export interface PrintedFigure {
  /** The question over it. */
  readonly question: string;
  readonly heading: number;
  readonly drawing: number;
  readonly captionBegins: number;
  readonly captionEnds: number;
}

/**
 * Prints a page with Chromium and reads out of the PDF on which sheet each figure's question, drawing and caption are.
 *
 * Links to these parts are added after the end of the page, where they move nothing; Chromium writes a named
 * destination for what a link of the page leads to (ISO 32000-1, 12.3.2.3), with the sheet it lies on.
 */
export async function printedFigures(page: Page, format: PaperFormat): Promise<readonly PrintedFigure[]> {
  // Paper shows other drawings of some charts than a screen.
  await page.emulateMediaType('print');
  const questions = await page.evaluate(() => {
    const list = document.createElement('nav');
    const mark = (element: Element, id: string): void => {
      // Parts that others refer to keep their ids and get a mark inside.
      const target = element.id === '' ? element : document.createElement('span');
      if (target !== element) element.prepend(target);
      target.id = id;
      const link = document.createElement('a');
      link.href = `#${id}`;
      link.textContent = id;
      list.append(link, ' ');
    };
    const shown = (element: Element): boolean => element.getClientRects().length > 0;
    for (const details of document.querySelectorAll('details')) details.open = true;
    const figures = [...document.querySelectorAll('figure')];
    const found = figures.map((figure, at) => {
      const headings = [...document.querySelectorAll('h2, h3, summary')].filter(
        (heading) =>
          shown(heading) &&
          !figure.contains(heading) &&
          heading.compareDocumentPosition(figure) === Node.DOCUMENT_POSITION_FOLLOWING,
      );
      const heading = headings.at(-1);
      const drawing = [...figure.querySelectorAll('.chart-wide, .chart-narrow')].find(shown);
      const caption = figure.querySelector('figcaption');
      const texts = [...(caption?.querySelectorAll('p') ?? [])].filter(shown);
      const last = texts.at(-1)?.lastChild;
      if (heading === undefined || drawing === undefined || caption === null)
        throw new Error(`Figure ${at + 1} lacks a question, a drawing or a caption.`);
      mark(heading, `printed-${at}-heading`);
      mark(drawing, `printed-${at}-drawing`);
      const question = heading.textContent.trim();
      // A chart that says all of it has no words below.
      if (!(last instanceof Text)) return { question, captioned: false };
      const words = last.data.trimEnd();
      const end = document.createElement('span');
      last.splitText(words.lastIndexOf(' ') + 1).before(end);
      if (end.nextSibling !== null) end.append(end.nextSibling);
      mark(caption, `printed-${at}-begins`);
      mark(end, `printed-${at}-ends`);
      return { question, captioned: true };
    });
    document.body.append(list);
    return found;
  });
  const pdf = Buffer.from(await page.pdf({ format, preferCSSPageSize: false })).toString('latin1');
  const sheets = sheetsOf(pdf);
  const sheetOf = (name: string): number => {
    const object = new RegExp(`/${name}\\s*\\[\\s*(\\d+) 0 R`).exec(pdf)?.[1];
    const sheet = sheets.indexOf(object ?? '');
    if (sheet < 0) throw new Error(`The PDF does not say where ${name} is.`);
    return sheet;
  };
  return questions.map(({ question, captioned }, at) => ({
    question,
    heading: sheetOf(`printed-${at}-heading`),
    drawing: sheetOf(`printed-${at}-drawing`),
    captionBegins: sheetOf(`printed-${at}-${captioned ? 'begins' : 'drawing'}`),
    captionEnds: sheetOf(`printed-${at}-${captioned ? 'ends' : 'drawing'}`),
  }));
}

/** Object numbers of the sheets in their order: the leaves of the page tree (ISO 32000-1, 7.7.3.2). */
export function sheetsOf(pdf: string): readonly string[] {
  const objects = new Map(
    [...pdf.matchAll(/(\d+) 0 obj\s*(<<[\s\S]*?)endobj/g)].map(([, number = '', body = '']) => [
      number,
      body,
    ]),
  );
  const leaves = (number: string): readonly string[] => {
    const kids = /\/Kids\s*\[([^\]]*)\]/.exec(objects.get(number) ?? '')?.[1];
    return kids === undefined
      ? [number]
      : [...kids.matchAll(/(\d+) 0 R/g)].flatMap(([, kid = '']) => leaves(kid));
  };
  const root = /\/Type\s*\/Catalog[\s\S]*?\/Pages\s+(\d+) 0 R/.exec(pdf)?.[1];
  if (root === undefined) throw new Error('The PDF has no catalogue of pages.');
  return leaves(root);
}
