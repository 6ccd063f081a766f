import { escapeXml } from '../prose/escapeXml.ts';

/**
 * The few lines by which a page gives every frame of ours the height that it asks for. It believes a message only as far
 * as one of the page's own frames has sent it.
 */
const frameListener = `<script>
  addEventListener('message', ({ source, data }) => {
    if (data?.name !== 'straightface:height' || !(data.px > 0)) return;
    for (const frame of document.querySelectorAll('iframe'))
      if (frame.contentWindow === source) frame.height = Math.ceil(data.px);
  });
</script>`;

interface Framed {
  /** Absolute address of the page in the frame. */
  readonly address: string;
  /** What the frame shows, for those who hear it. */
  readonly title: string;
  /** px, until the script has a better one. */
  readonly height: number;
}

/** What somebody pastes into a page to show a chart: the frame, then the script that sets its height. */
export function frameCode({ address, title, height }: Framed): string {
  return (
    `<iframe src="${escapeXml(address)}" title="${escapeXml(title)}" width="100%" height="${height}" ` +
    `loading="lazy" frameborder="0"></iframe>\n${frameListener}`
  );
}
