import { formatTime } from 'backhalf';
import { Board, CountField, PoolField, TimeField, TimesField } from '~/ui';
import { linesOf } from '~/ui/csv';
import { NotationField } from '~/ui/NotationField';
import { plausibleTimes } from '~/ui/plausible';
import { type CalculatorProps, useForm } from '~/ui/use-form';
import { oonaThroughSet, oonaTrials } from './example';
import { addressOf, type CriticalFields, shape } from './fields';
import { type CriticalResult, hasSet, viewOf } from './model';
import { Notes, Result } from './Result';
import { raceRows, trialRows, verdictRows } from './rows';
import { useThroughSet } from './use-through-set';

export default function Calculator(props: CalculatorProps<CriticalFields>) {
  const form = useForm(props, { id: 'critical', initial: oonaTrials, shape });
  const fields = form.fields.value;
  const view = viewOf(fields, useThroughSet(hasSet(fields)));
  const { errors, result } = view;
  const unit = view.pool?.unit ?? 'm';

  return (
    <Board
      form={form}
      errors={errors}
      example={oonaThroughSet}
      cleared={{ ...fields, trials: '', set: '', pace: '', tau: '' }}
      awaited="Critical speed appears"
      answer={result && <Result result={result} />}
      below={result && <Notes result={result} />}
      href={addressOf(fields)}
      csv={result && csvOf(result)}
    >
      <PoolField form={form} error={errors.length} />
      <TimesField
        {...form.field('trials')}
        label={`Trials, one a line: distance in ${unit}, then time`}
        hint="Type or paste: 400 4:53.2. Each flat out and rested, on a day of its own; after a warm-up, in good health, with a coach or lifeguard on deck."
        what="trial"
        reading={view.trials.text}
        errors={errors.trials}
        lines={4}
      />
      <CountField {...form.field('race')} label={`Race distance, ${unit}`} error={errors.race} />
      <NotationField
        {...form.field('set')}
        label="Set to follow the reserve through"
        hint="As 12 x 100 in 1:11 on 1:20; may stay empty."
        error={errors.set}
        lines={2}
        class="set-text"
      />
      <div class="row pair">
        <TimeField
          {...form.field('pace')}
          label={`Pace per 100 ${unit}`}
          hint="For swims without a target."
          optional
          within={plausibleTimes(100)}
        />
        <CountField
          {...form.field('tau')}
          label="Time constant, s"
          hint="For the integral form alone."
          error={errors.tau}
          parts
        />
      </div>
    </Board>
  );
}

function csvOf(result: CriticalResult) {
  const tables = [
    trialRows(result),
    raceRows(result, 'settles'),
    raceRows(result, 'fades'),
    ...(result.forms ? [verdictRows(result)] : []),
  ];
  return {
    name: 'critical-speed',
    rows: [
      [`Critical pace, per 100 ${result.unit}`, formatTime(result.pace)],
      ...tables.flatMap((table) => [[], ...linesOf(table)]),
    ],
  };
}
