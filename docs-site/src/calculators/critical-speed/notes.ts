import type { Caution } from 'backhalf';
import type { MethodNote } from '~/ui';
import { distanceText } from '~/ui/wording';
import type { CriticalResult } from './model';

/** What each method takes for granted; what the answer itself already warns of is left out. */
export function notesOf(result: CriticalResult): readonly MethodNote[] {
  const { forms, model } = result;
  const said = new Set(model.cautions.map(({ message }) => message));
  const unsaid = (cautions: readonly Caution[]) =>
    cautions.flatMap(({ message }) => (said.has(message) ? [] : message));
  const traces = (forms ?? []).flatMap(({ trace }) => (typeof trace === 'string' ? [] : trace));
  return [
    raceNote(result, 'settles', 'Critical speed', unsaid),
    raceNote(result, 'fades', 'Power law', unsaid),
    ...(traces.length > 0
      ? [
          {
            name: 'The reserve',
            assumptions: traces.flatMap(({ assumptions }) => assumptions),
            cautions: traces.flatMap(({ cautions }) => cautions.map(({ message }) => message)),
            lacks:
              traces.length < 3
                ? ['Integral: type its time constant; none holds for every swimmer, or for long.']
                : [],
          },
        ]
      : []),
  ];
}

function raceNote(
  { races, unit }: CriticalResult,
  method: 'settles' | 'fades',
  name: string,
  unsaid: (cautions: readonly Caution[]) => readonly string[],
): MethodNote {
  const answers = races.map((race) => ({ distance: race.distance, answer: race[method] }));
  const found = answers.flatMap(({ answer }) => (typeof answer === 'string' ? [] : answer));
  return {
    name,
    assumptions: found.flatMap(({ assumptions }) => assumptions),
    cautions: found.flatMap(({ cautions }) => unsaid(cautions)),
    lacks: answers.flatMap(({ distance, answer }) =>
      typeof answer === 'string' ? `${distanceText(distance)} ${unit}: ${answer}` : [],
    ),
  };
}
