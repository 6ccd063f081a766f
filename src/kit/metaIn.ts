import { readTags, valueIn } from './htmlTags.ts';

/** What the head of a page says under a name: the content of its `meta` element; null where it has none. */
export function metaIn(html: string, name: string): string | null {
  const end = html.indexOf('</head>');
  let content: string | null = null;
  readTags(end === -1 ? html : html.slice(0, end), {
    concerns: (element) => element === 'meta',
    opened: ({ attributes }) => {
      if (content === null && valueIn(attributes, 'name') === name) content = valueIn(attributes, 'content');
    },
    closed: () => {},
  });
  return content;
}
