import { convertDistance, formatTime, pacePer } from 'backhalf';
import { distanceText, signedNumber } from '~/ui/wording';
import type { CriticalResult } from './model';
import type { Answer } from './races';

/** The trials as a table: figures as text, units in the headings. */
export function trialRows({ swims, model, unit }: CriticalResult) {
  return {
    columns: [`Trial, ${unit}`, 'Time', `Per 100 ${unit}`, `Beyond the line, ${unit}`],
    rows: swims.map(({ distance, time }, i) => ({
      head: distanceText(distance),
      cells: [
        formatTime(time),
        formatTime(pacePer(time, distance)),
        signedNumber(convertDistance(model.residuals[i] ?? 0, 'm', unit)),
      ],
    })),
  };
}

/** The races by one method. */
export function raceRows({ races, unit }: CriticalResult, method: 'settles' | 'fades') {
  return {
    columns: [`Race, ${unit}`, 'Time', 'Fast end', 'Slow end', `Per 100 ${unit}`],
    rows: races.map((race) => ({
      head: distanceText(race.distance),
      cells: cellsOf(race[method], race.distance),
    })),
  };
}

function cellsOf(answer: Answer, distance: number): readonly string[] {
  if (typeof answer === 'string') return ['–', '–', '–', '–'];
  const { time, range } = answer;
  return [
    formatTime(time),
    range ? formatTime(range.low) : '–',
    range ? formatTime(range.high) : '–',
    formatTime(pacePer(time, distance)),
  ];
}

/** What each form of recovery makes of the set. */
export function verdictRows({ forms, unit }: CriticalResult) {
  const inUnit = (metres: number) => signedNumber(convertDistance(metres, 'm', unit), false);
  return {
    columns: ['Recovery', 'Verdict', `Least left, ${unit}`, 'Runs out in'],
    rows: (forms ?? []).map(({ name, trace }) => ({
      head: name,
      cells:
        typeof trace === 'string'
          ? [trace, '–', '–']
          : [
              trace.verdict,
              trace.runsOut ? '–' : inUnit(trace.lowest),
              trace.runsOut ? `swim ${trace.runsOut.rep}` : '–',
            ],
    })),
  };
}

/** What each form leaves after every swim. */
export function stepRows({ forms, unit }: CriticalResult) {
  const all = forms ?? [];
  const swims = Math.max(
    0,
    ...all.map(({ trace }) => (typeof trace === 'string' ? 0 : trace.steps.length)),
  );
  return {
    columns: [`Left after swim, ${unit}`, ...all.map(({ name }) => name)],
    rows: Array.from({ length: swims }, (_, i) => ({
      head: String(i + 1),
      cells: all.map(({ trace }) => {
        if (typeof trace === 'string') return '–';
        const step = trace.steps[i];
        if (step === undefined) return '–';
        if (trace.runsOut?.rep === i + 1) return 'runs out';
        return signedNumber(convertDistance(step.afterSwim, 'm', unit), false);
      }),
    })),
  };
}
