import type { ResultCardProps } from '~/ui';
import { paceOf, readSentence, wayOut } from './answer';
import type { CurrentRead } from './current';
import { clock } from './rows';

/** What a current shows that was read out of two times. */
export function readAnswer(read: CurrentRead, onPlan: () => void): ResultCardProps {
  const { speed, current, cost } = read.reading;
  return {
    headline: {
      label: 'The current along the leg, m/s',
      figure: Math.abs(current).toFixed(2),
      note: wayOut(read),
    },
    beside: [
      {
        label: 'Through the water, m/s',
        figure: speed.toFixed(2),
        note: `${paceOf(speed)} per 100 m in still water`,
      },
      { label: 'What it cost out and back', figure: clock(cost) },
    ],
    cautions: [
      'It takes one effort both ways and water that did not change: a tide that turns, or a tired way home, reads as current.',
      'Wind and waves slow a swimmer too, and are read as current here.',
    ],
    sentence: readSentence(read),
    children: (
      <p class="no-print">
        <button type="button" class="button" onClick={onPlan}>
          Plan the same leg, out and back
        </button>
      </p>
    ),
    working: (
      <p>
        Speed out and speed back over ground: their mean is the swimmer’s speed through the water,
        half their difference is the current.
      </p>
    ),
  };
}
