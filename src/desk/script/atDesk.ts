import { insertValues } from './insertValues.ts';
import { takeDrops } from './takeDrops.ts';

insertValues(document);
takeDrops(document);
