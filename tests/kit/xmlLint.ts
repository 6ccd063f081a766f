import { validateXML } from 'xmllint-wasm';

/** What libxml2 finds wrong with an XML file: that it is not well formed, or not as a schema asks. */
export async function wrongInXml(
  contents: string,
  { schema, kind }: { readonly schema: string; readonly kind: 'schema' | 'relaxng' },
): Promise<readonly string[]> {
  const { errors } = await validateXML({
    xml: [{ fileName: 'tried.xml', contents }],
    schema: [schema],
    extension: kind,
  });
  return errors.map(({ rawMessage }) => rawMessage);
}
