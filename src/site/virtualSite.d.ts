declare module 'virtual:straightface/site' {
  /** Absolute path of the content folder. */
  export function contentDir(): string;
  /** The content that pages are made of; `fresh` has it read anew where pages read it themselves, as in `dev`. */
  export function siteContent(of: { readonly fresh: boolean }): import('./siteContent.ts').SiteContent;
}
