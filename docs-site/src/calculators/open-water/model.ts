import { queryOf } from '~/ui/address';
import { type CurrentRead, currentFrom } from './current';
import type { WaterFields } from './fields';
import { planFrom, type WaterPlan } from './plan';

/** Where these fields stand in the calculator on its own page. */
export const addressOf = (fields: WaterFields): string =>
  `/calculators/open-water/?${queryOf(fields)}`;

export interface WaterView {
  /** What is wrong, by field, in the order in which it should be put right. */
  readonly errors: Readonly<Record<string, string>>;
  /** None while something is wrong, or where a current is read. */
  readonly planned: WaterPlan | null;
  /** None while something is wrong, or where a swim is planned. */
  readonly read: CurrentRead | null;
}

/** From what stands in the fields to all that is shown. */
export function viewOf(fields: WaterFields): WaterView {
  if (fields.job === 'read') {
    const { read = null, errors = {} } = currentFrom(fields);
    return { errors, planned: null, read };
  }
  const { planned = null, errors = {} } = planFrom(fields);
  return { errors, planned, read: null };
}
