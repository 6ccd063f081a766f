declare module 'virtual:astro:manifest' {
  /** All that the framework knows of the compiled pages. */
  export const manifest: import('astro').SSRManifest;
}
