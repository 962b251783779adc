import { formatTime, hundredths, pacePer } from 'backhalf';
import { NumberTable, type ResultCardProps } from '~/ui';
import { type Csv, linesOf } from '~/ui/csv';
import { distanceText } from '~/ui/wording';
import { effectWords, sentenceOf } from './answer';
import type { WaterPlan } from './plan';
import { aims, clock, namedRows, planTable, toTheSecond } from './rows';
import { TimeBars } from './TimeBars';

/** What a plan shows. */
export function planAnswer(planned: WaterPlan): ResultCardProps {
  const { plan, effect } = planned;
  const sentence = sentenceOf(planned);
  return {
    headline: {
      label: `The watch at halfway, ${distanceText(plan.halfway.distance)} m`,
      figure: clock(plan.halfway.time),
      note: `finish ${clock(plan.time)}`,
    },
    beside: [
      {
        label: 'What the current costs',
        figure: costOf(planned),
        note: `${clock(plan.stillWater)} in still water`,
      },
      {
        label: 'Effort, per 100 m of still water',
        figure: formatTime(pacePer(plan.stillWater, plan.halfway.distance * 2), { decimals: 1 }),
        note: `${plan.speed.toFixed(2)} m/s through the water`,
      },
      ...(effect === null
        ? []
        : [
            {
              label: `The finish ${effectWords[effect.name]}`,
              figure: `${clock(effect.fast)} – ${clock(effect.slow)}`,
              note: effect.covers,
            },
          ]),
    ],
    cautions: [
      ...plan.cautions.map(({ message }) => message),
      ...(effect === null
        ? []
        : ['Whether drafting or a wetsuit is allowed, the event’s rules of the day decide.']),
    ],
    sentence,
    children: (
      <>
        <TimeBars rows={namedRows(planned)} still={plan.stillWater} finding={sentence} />
        <div class="worded">
          <NumberTable {...planTable(planned)} />
        </div>
      </>
    ),
    working: <Working planned={planned} />,
  };
}

/** The difference of what is shown, to the second, with its sign. */
function costOf({ plan }: WaterPlan): string {
  const cost = toTheSecond(plan.time) - toTheSecond(plan.stillWater);
  const sign = cost === 0 ? '' : cost < 0 ? '−' : '+';
  return sign + clock(hundredths(Math.abs(cost)));
}

function Working({ planned }: { readonly planned: WaterPlan }) {
  const { plan } = planned;
  const rows = namedRows(planned);
  const spent = (water: string) =>
    hundredths(rows.reduce((sum, row) => sum + (row.water === water ? row.shown : 0), 0));
  const [against, along] = [spent('against'), spent('with')];
  return (
    <>
      {against > 0 && along > 0 && (
        <p>
          {clock(against)} are spent against the current and only {clock(along)} with it. Where both
          are as long, the water takes for longer than it gives, so out and back is never free.
        </p>
      )}
      {aims(planned).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <p>
        Speed over ground is the speed through the water, less what is spent aiming across it, plus
        or minus the current along the leg. The same effort takes {clock(plan.stillWater)} in still
        water.
      </p>
    </>
  );
}

export const csvOf = (planned: WaterPlan): Csv['rows'] => [
  ...linesOf(planTable(planned)),
  [],
  ['Watch at halfway', clock(planned.plan.halfway.time)],
  ['Finish', clock(planned.plan.time)],
  ['In still water', clock(planned.plan.stillWater)],
];
