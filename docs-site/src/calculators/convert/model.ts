import type { Pool } from 'backhalf';
import { queryOf } from '~/ui/address';
import { readPool } from '~/ui/pool-text';
import { type Answer, type Outcome, type Problems, problemsOf, refused } from './answer';
import { type ConvertFields, poolFields } from './fields';
import { convertPaceText } from './pace';
import { convertSendOffText } from './send-off';
import { convertStretch } from './stretch';
import { convertSwim } from './swim';

/** Where these fields stand in the calculator on its own page. */
export const addressOf = (fields: ConvertFields): string =>
  `/calculators/convert/?${queryOf(fields)}`;

export interface ConvertView {
  readonly from: Pool | null;
  readonly to: Pool | null;
  /** What is wrong, by field, in the order in which it should be put right. */
  readonly problems: Problems;
  /** None while something is still wrong. */
  readonly answer: Answer | null;
}

/** From what stands in the fields to all that is shown. */
export function viewOf(fields: ConvertFields): ConvertView {
  const here = readPool(poolFields(fields, 'from'));
  const there = readPool(poolFields(fields, 'to'));
  const [from, to] = [here.pool, there.pool];
  if (from === null || to === null) {
    const problems = problemsOf({ 'from-length': here.error, 'to-length': there.error });
    return { from, to, problems, answer: null };
  }
  const { answer, problems } = convert(fields, from, to);
  return { from, to, problems: problems ?? {}, answer: answer ?? null };
}

function convert(fields: ConvertFields, from: Pool, to: Pool): Outcome {
  const distance = fields.what === 'distance';
  if (distance && from.unit === to.unit) {
    const unit = from.unit === 'm' ? 'metres' : 'yards';
    return refused('to-pool', `Both pools are in ${unit}; choose one in the other unit.`);
  }
  if (!distance && from.unit === to.unit && from.length === to.length) {
    return refused('to-pool', 'Both pools are the same; choose another.');
  }
  if (distance) return convertStretch(fields.stretch, from, to);
  if (fields.what === 'pace') return convertPaceText(fields, from, to);
  if (fields.what === 'send-off') return convertSendOffText(fields, from, to);
  return convertSwim(fields, from, to);
}
