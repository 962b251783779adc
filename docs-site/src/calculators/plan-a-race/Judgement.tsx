import { formatTime, type Hundredths, type PlanJudgement } from 'backhalf';
import { NumberTable } from '~/ui';
import { distanceText, slowerOrFaster } from '~/ui/wording';

interface Props {
  readonly judged: PlanJudgement;
  readonly unit: 'm' | 'yd';
}

/** The swim against the plan: was the time made, and was it swum as planned? */
export const Judgement = ({ judged, unit }: Props) => (
  <section class="judgement" aria-label="The swim against the plan">
    <p class="judgement-title">The swim against the plan</p>
    <p>{judgedText(judged)}</p>
    <NumberTable caption="Mark by mark; + is slower than planned" {...judgedRows(judged, unit)} />
    <p class="said">
      “Shape alone” is the swim against the plan stretched to the time that was swum: how the race
      was spread, whatever it came to.
    </p>
  </section>
);

/** The verdict in words. */
export function judgedText({ rows, difference, firstHalf, secondHalf }: PlanJudgement): string {
  const finish = rows.at(-1);
  const swum = finish ? formatTime(finish.swum) : '';
  const whole =
    difference === 0 ? 'the goal to the hundredth' : `${slowerOrFaster(difference)} than the goal`;
  if (firstHalf === null || secondHalf === null) return `${swum}: ${whole}.`;
  return `${swum}: ${whole}. Against the plan, the first half was ${slowerOrFaster(firstHalf)}, the second ${slowerOrFaster(secondHalf)}.`;
}

/** The judgement as a table: figures as text, the unit in the heading. */
export function judgedRows({ rows }: PlanJudgement, unit: string) {
  const signed = (time: Hundredths) => formatTime(time, { signed: true });
  return {
    columns: [`Distance (${unit})`, 'Planned', 'Swum', 'Difference', 'Of it, new', 'Shape alone'],
    rows: rows.map(({ distance, planned, swum, difference, lost, ofShape }) => ({
      head: distanceText(distance),
      cells: [
        formatTime(planned),
        formatTime(swum),
        signed(difference),
        signed(lost),
        signed(ofShape),
      ],
    })),
  };
}
