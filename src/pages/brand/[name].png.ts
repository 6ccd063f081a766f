import type { APIRoute, GetStaticPaths } from 'astro';
import { brandPaths, brandResponse, type BrandPath } from '../../site/brand/brandRoute.ts';

export const getStaticPaths = (() =>
  brandPaths({ dev: import.meta.env.DEV, ending: '.png' })) satisfies GetStaticPaths;

export const GET: APIRoute<BrandPath['props']> = ({ props }) => brandResponse(props);
