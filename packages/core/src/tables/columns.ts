import { numberOf } from '../check.js';

/** Where things stand in a table: cell numbers, counts from 0. */
export interface Columns {
  readonly layout: 'wide' | 'long';
  /** Cells that name the swimmer. */
  readonly names: readonly number[];
  /** The cell that numbers the swim or rep, or −1. */
  readonly rep: number;
  /** Wide: the cells that hold times, and the distance of each, in the pool's unit. */
  readonly times: readonly { readonly cell: number; readonly distance: number }[];
  /** Long: the cells of distance and time, or −1. */
  readonly distance: number;
  readonly time: number;
}

const NAME = /^(name|swimmer|athlete|first name|last name)$/i;
const REP = /^(rep|reps|no\.?|nr\.?|#|swim|heat)$/i;
const DISTANCE = /^(distance|dist\.?|mark|at)$/i;
const TIME = /^(time|split|lap|cumulative|total)$/i;
const LENGTH = /^(\d+(?:[.,]\d+)?)\s*(?:m|yd|yds|y|yards|metres|meters)?$/i;

/**
 * Reads a header; null where the first line is none. Growing round numbers without a word may be
 * distances or times: they are a header only where nothing else tells the distances.
 */
export function columnsOf(header: readonly string[], needed: boolean): Columns | null {
  const find = (pattern: RegExp) => header.findIndex((cell) => pattern.test(cell));
  const names = header.flatMap((cell, i) => (NAME.test(cell) ? [i] : []));
  const rep = find(REP);
  const times = header.flatMap((cell, i) => {
    const length = LENGTH.exec(cell)?.[1];
    return length === undefined ? [] : [{ cell: i, distance: Number(length.replace(',', '.')) }];
  });
  const [distance, time] = [find(DISTANCE), find(TIME)];
  const common = { names, rep, times, distance, time };
  if (distance >= 0 && time >= 0) return { layout: 'long', ...common };
  const grows = times.every((at, i) => at.distance > (times[i - 1]?.distance ?? 0));
  const worded =
    names.length > 0 || rep >= 0 || times.some(({ cell }) => /[a-z]$/i.test(header[cell] ?? ''));
  const round = times.every(({ distance }) => distance % 5 === 0);
  return times.length > 0 && grows && (worded || (needed && round))
    ? { layout: 'wide', ...common }
    : null;
}

/** The columns of a table without a header: a name where the first cell is no number, then times. */
export function columnsWithout(first: readonly string[], every: unknown): Columns {
  const step = numberOf(every, 'The distance of a lap (the table has no header that tells)', {
    above: 0,
    max: 1e6,
  });
  const named = /^[^\d:]/.test(first[0] ?? '') ? 1 : 0;
  const cells = first.slice(named).map((_, i) => ({ cell: i + named, distance: step * (i + 1) }));
  return { layout: 'wide', names: named ? [0] : [], rep: -1, times: cells, distance: -1, time: -1 };
}
