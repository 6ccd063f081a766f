/** Charts that a narrative may refer to, by the name it refers to them with. */
export const chartQuestions: Readonly<Record<string, string>> = {
  apart: 'How far apart?',
  shots: 'All the shots',
  landing: 'Where they landed',
  order: 'Shots in order',
  luck: 'How big a gap does luck make?',
  spread: 'Which is more repeatable?',
  'with-and-without': 'Did leaving shots out change it?',
  hitters: 'Who gained?',
  delivery: 'Was it the same swing?',
  yards: 'Where do the yards come from?',
  'launch-and-spin': 'Launch and spin at this ball speed',
  price: 'What does the gap cost?',
};
