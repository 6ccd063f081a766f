/** Opens an address in the person's own browser; where that cannot be done, the printed address does. */
export async function openInBrowser(address: string): Promise<void> {
  const { default: open } = await import('open');
  const opened = await open(address);
  opened.on('error', () => undefined);
}
