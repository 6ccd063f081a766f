import { App } from 'astro/app';
import { StaticPaths } from 'astro/runtime/prerender/static-paths.js';
import { manifest } from 'virtual:astro:manifest';

/** A page or file of the site, as the framework knows it. */
type Path = Awaited<ReturnType<StaticPaths['getAll']>>[number];

/** A fault in a page stops the build, where a server would answer with a page about it. */
class PageApp extends App {
  override createErrorHandler(): ReturnType<App['createErrorHandler']> {
    return {
      renderError: (_request, { error, status }) => {
        throw error ?? new Error(`A page answers with ${status}.`);
      },
    };
  }
}

/** What the pages of some routes can be asked. */
export interface PageRoutes {
  readonly paths: () => Promise<readonly Path[]>;
  readonly render: (request: Request, route: Path['route']) => Promise<Response>;
}

/**
 * The pages whose source file is wanted, with a memory of their own: the framework lists the paths of a route once, and
 * they hang on the content that is given.
 *
 * @param isWanted of the path of a source file, such as `src/pages/index.astro`
 */
export function pageRoutes(isWanted: (component: string) => boolean): PageRoutes {
  const routes = manifest.routes.filter(({ routeData }) => isWanted(routeData.component));
  const app = new PageApp({ ...manifest, routes }, false);
  return {
    paths: () => new StaticPaths(app).getAll(),
    render: (request, routeData) => app.render(request, { routeData }),
  };
}
