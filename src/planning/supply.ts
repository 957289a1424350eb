// The material an event needs, by how it is got ready: dried, fresh, preserved or artificial. A mixed piece needs two. Each supply must be ready for the first
// bench day that uses it.

import { type DryingTime, dryingTime } from '../handbook/drying.ts';
import { ingredientKey } from '../handbook/ingredient-names.ts';
import type { Material } from '../handbook/pieces.ts';
import { boughtReady, plantNamed } from '../handbook/plants.ts';
import type { BenchJob } from './bench-job.ts';
import type { BenchRules } from './bench-rules.ts';
import type { EventToPlan, IngredientToGet } from './event-to-plan.ts';

export type Supply = Exclude<Material, 'mixed'>;

export const suppliesOf = (material: Material): readonly Supply[] => (material === 'mixed' ? ['dried', 'fresh'] : [material]);

export const supplyOf = (job: Pick<BenchJob, 'material' | 'stage'>): Supply =>
  job.material === 'mixed' ? (job.stage === 'base' ? 'dried' : 'fresh') : job.material;

/** The slowest plant to dry at home. Undefined when every plant of the recipe is bought ready dried. */
export const slowestDrying = (event: EventToPlan, rules: BenchRules): DryingTime | undefined => {
  if (event.ingredients.length === 0) return dryingTime(undefined, 'hang', rules.drying);
  const times = dryAtHome(event).map((item) => timeOf(item, rules));
  return times.reduce<DryingTime | undefined>((slowest, time) => (slowest && slowest.most >= time.most ? slowest : time), undefined);
};

const timeOf = (item: IngredientToGet, rules: BenchRules): DryingTime =>
  item.dryingDays === undefined
    ? dryingTime(item.name, 'hang', rules.drying)
    : { least: item.dryingDays, most: item.dryingDays, plant: plantNamed(item.name) ?? item.name, by: 'the studio', rows: [] };

// In a mixed piece with some ingredients bought dried, the rest of the recipe is its fresh part.
const dryAtHome = (event: EventToPlan): readonly IngredientToGet[] => {
  const ready = event.ingredients.filter((item) => item.dryingDays === 0 || boughtReady(item.name));
  const mixed = event.lines.some((line) => line.material === 'mixed') && !event.lines.some((line) => line.material === 'dried');
  return mixed && ready.length > 0 ? [] : event.ingredients.filter((item) => !ready.includes(item));
};

const usualLeadDays = 3; // working days; common practice, no source

/** Working days from order to delivery, of the slowest ingredient, and whether nobody said. */
export const leadDays = (event: EventToPlan, rules: BenchRules): { readonly days: number; readonly assumed: boolean } => {
  const usual = rules.leadDays ?? usualLeadDays;
  const said = event.ingredients.map((item) => item.leadDays ?? usual);
  const assumed = rules.leadDays === undefined && event.ingredients.every((item) => item.leadDays === undefined);
  return { days: said.length === 0 ? usual : Math.max(...said), assumed };
};

/** How far an event's material has come, by what was ticked off. */
export const hasBeen = (event: EventToPlan, step: EventToPlan['steps'][number]['step']): boolean => {
  const ticked = event.steps.filter((one) => one.step === step);
  if (ticked.some((one) => one.item === undefined)) return true;
  const items = ticked.map((one) => nameOf(one.item ?? ''));
  return event.ingredients.length > 0 && event.ingredients.every((item) => items.includes(nameOf(item.name)));
};

const nameOf = (words: string): string => plantNamed(words) ?? ingredientKey(words);
