import type { APIRoute, GetStaticPaths } from 'astro';
import { picturePaths, type PicturePath } from '../../../../site/kitPaths.ts';
import { pictureResponse } from '../../../../site/pictureResponse.ts';

export const getStaticPaths = (() =>
  picturePaths({ dev: import.meta.env.DEV, format: 'png' })) satisfies GetStaticPaths;

export const GET: APIRoute<PicturePath['props']> = ({ props }) => pictureResponse(props);
