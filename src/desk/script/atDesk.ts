import { followPlan } from './followPlan.ts';
import { insertValues } from './insertValues.ts';
import { takeDrops } from './takeDrops.ts';
import { takeOffered } from './takeOffered.ts';

followPlan(document);
insertValues(document);
takeDrops(document);
takeOffered(document);
