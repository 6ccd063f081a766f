import { insertValues } from './insertValues.ts';
import { takeDrops } from './takeDrops.ts';
import { takeOffered } from './takeOffered.ts';

insertValues(document);
takeDrops(document);
takeOffered(document);
