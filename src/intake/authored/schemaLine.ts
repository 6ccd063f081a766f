/** Files of a content folder that an editor can hold to a schema. */
export type EditorSchema = 'report' | 'shop' | 'contender';

/** Where the schemas stand in a content folder; hidden, so that no reader takes them for content. */
export const schemaFolder = '.schema';

/** The first line of a file that editors know: where its schema stands, with `up` leading to the content folder. */
export const schemaLine = (name: EditorSchema, up: '' | '../' | '../../'): string =>
  `# yaml-language-server: $schema=${up}${schemaFolder}/${name}.json`;
