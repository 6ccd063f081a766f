import type { AstroIntegration } from 'astro';

/**
 * A page for every example of every page component, under `/specimens/`: only where `SPECIMENS` is set, as tests do, so
 * that no shop publishes them.
 */
export function specimens(): AstroIntegration {
  return {
    name: 'specimens',
    hooks: {
      'astro:config:setup': ({ injectRoute }) => {
        if (process.env['SPECIMENS'] === undefined) return;
        const folder = './tests/specimen-pages';
        injectRoute({ pattern: '/specimens', entrypoint: `${folder}/index.astro`, prerender: true });
        injectRoute({
          pattern: '/specimens/[component]/[example]',
          entrypoint: `${folder}/example.astro`,
          prerender: true,
        });
      },
    },
  };
}
