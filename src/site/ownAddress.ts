/** Names under which a machine speaks to itself: under any other one a page elsewhere could be speaking. */
const ownNames: readonly string[] = ['localhost', '127.0.0.1', '[::1]'];

/**
 * The address that was asked for, if it is one of this machine's own.
 *
 * @param host the header of that name: a name, and a port where it is not the usual one
 */
export function ownAddress(host: string): URL | null {
  const asked = URL.parse(`http://${host}`);
  return asked !== null && ownNames.includes(asked.hostname) ? asked : null;
}
