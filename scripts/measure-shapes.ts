import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

// Measures how finalists spread their races and writes it as the library's constant:
// node scripts/measure-shapes.ts

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** One row of the constant. */
interface Shape {
  sex: string;
  distance: number;
  swims: number;
  laps: number[];
}

/** Mean lap of the finals by sex and distance, each swim's laps in parts of 10,000 of its mean lap. */
export function measuredShapes(csv: string): readonly Shape[] {
  const [head = '', ...lines] = csv.trim().split('\n');
  const names = head.split(',');
  const rows = lines.map((line) => {
    const cells = line.split(',');
    return (name: string): string => cells[names.indexOf(name)] ?? '';
  });
  const finals = rows.filter((cell) => cell('phase') === 'final');
  const events = Map.groupBy(finals, (cell) => `${cell('sex')} ${cell('distance')}`);
  return [...events]
    .map(([event, swims]) => {
      const [sex = '', distance = ''] = event.split(' ');
      const shares = swims.map((cell) => {
        const laps = cell('laps').split(' ').map(Number);
        return laps.map((lap) => (lap * laps.length * 10_000) / Number(cell('time')));
      });
      const laps = (shares[0] ?? []).map((_, i) => {
        const sum = shares.reduce((total, share) => total + (share[i] ?? Number.NaN), 0);
        return Math.round(sum / shares.length);
      });
      return { sex, distance: Number(distance), swims: swims.length, laps };
    })
    .sort((a, b) => a.sex.localeCompare(b.sex) || a.distance - b.distance);
}

function write(): void {
  const csv = readFileSync(here('../tests/reference/data/championship-freestyle.csv'), 'utf8');
  const file = here('../packages/core/src/plan/championship-laps.ts');
  writeFileSync(
    file,
    `// Written by scripts/measure-shapes.ts; a test measures again and compares.

/**
 * The mean laps of finals, 50 m each, in parts of 10,000 of the mean lap, by sex and race distance in
 * metres; \`swims\` is how many swims were counted.
 *
 * @see Official results of the Olympic Games 2000–2016, via the open dataset swimset.
 */
export const CHAMPIONSHIP_LAPS: readonly {
  readonly sex: 'W' | 'M';
  readonly distance: number;
  readonly swims: number;
  readonly laps: readonly number[];
}[] = ${JSON.stringify(measuredShapes(csv))};
`,
  );
  execFileSync(here('../node_modules/.bin/biome'), ['check', '--write', file]);
}

if (import.meta.main) write();
