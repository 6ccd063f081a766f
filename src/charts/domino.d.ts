/** Its own declarations name another package. */
declare module '@mixmark-io/domino' {
  export function createDocument(): Document;
}
