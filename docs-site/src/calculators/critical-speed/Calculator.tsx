import { formatTime } from 'backhalf';
import {
  AddressNotice,
  CountField,
  FormActions,
  PoolField,
  type Problem,
  ResultCard,
  ShareBar,
  TimeField,
  TimesField,
} from '~/ui';
import { plausibleTimes } from '~/ui/plausible';
import { useForm } from '~/ui/use-form';
import { oonaThroughSet, oonaTrials } from './example';
import { addressOf, type CriticalFields, shape } from './fields';
import { type CriticalResult, type CriticalView, hasSet, viewOf } from './model';
import { Notes, Result } from './Result';
import { raceRows, trialRows, verdictRows } from './rows';
import { SetField } from './SetField';
import { useThroughSet } from './use-through-set';

interface Props {
  /** What it starts with; the example unless given. */
  readonly initial?: CriticalFields;
  /** Tells two on one page apart. */
  readonly id?: string;
  /** Whether it is alone on its page and may write the address. */
  readonly ownPage?: boolean;
}

export default function Calculator({
  initial = oonaTrials,
  id = 'critical',
  ownPage = false,
}: Props) {
  const form = useForm(id, initial, shape, ownPage);
  const fields = form.fields.value;
  const view = viewOf(fields, useThroughSet(hasSet(fields)));
  const { errors, result } = view;
  const problems = problemsOf(view, id);
  const unit = view.pool?.unit ?? 'm';

  return (
    <div class={`calculator not-content${ownPage ? ' own-page' : ''}`} id={id}>
      <AddressNotice problems={form.addressProblems.value} />
      <div class="board">
        <form onSubmit={(event) => event.preventDefault()}>
          <PoolField id={id} fields={fields} onValue={form.set} error={errors.pool} />
          <TimesField
            id={`${id}-trials`}
            name="trials"
            label={`Trials, one a line: distance in ${unit}, then time`}
            hint="Type or paste: 400 4:53.2. Each flat out and rested, on a day of its own; after a warm-up, in good health, with a coach or lifeguard on deck."
            what="trial"
            value={fields.trials}
            onValue={(text) => form.set('trials', text)}
            reading={view.trials.text}
            errors={errors.trials}
            lines={4}
          />
          <CountField
            id={`${id}-race`}
            name="race"
            label={`Race distance, ${unit}`}
            value={fields.race}
            onValue={(text) => form.set('race', text)}
            error={errors.race}
          />
          <SetField
            id={`${id}-set`}
            name="set"
            label="Set to follow the reserve through"
            hint="As 12 x 100 in 1:11 on 1:20; may stay empty."
            value={fields.set}
            onValue={(text) => form.set('set', text)}
            error={errors.set}
          />
          <div class="row pair">
            <TimeField
              id={`${id}-pace`}
              name="pace"
              label={`Pace per 100 ${unit}`}
              hint="For swims without a target."
              optional
              value={fields.pace}
              onValue={(text) => form.set('pace', text)}
              within={plausibleTimes(100)}
            />
            <CountField
              id={`${id}-tau`}
              name="tau"
              label="Time constant, s"
              hint="For the integral form alone."
              value={fields.tau}
              onValue={(text) => form.set('tau', text)}
              error={errors.tau}
              parts
            />
          </div>
          <FormActions
            form={form}
            example={oonaThroughSet}
            cleared={{ ...fields, trials: '', set: '', pace: '', tau: '' }}
          />
        </form>
        {result ? (
          <Result result={result} />
        ) : (
          <ResultCard headline={null} sentence="" waiting={waitingFor(problems)} />
        )}
      </div>
      {result && <Notes result={result} />}
      <ShareBar href={addressOf(fields)} problems={problems} csv={result && csvOf(result)} />
    </div>
  );
}

const waitingFor = (problems: readonly Problem[]): string =>
  `Critical speed appears once this is put right: ${problems.map(({ message }) => message).join(' ')}`;

function problemsOf({ errors, pool }: CriticalView, id: string): readonly Problem[] {
  const one = (name: string, message: string | null) =>
    message === null ? [] : [{ id: `${id}-${name}`, message }];
  return [
    ...one('length', pool === null ? errors.pool : null),
    ...errors.trials.map((message) => ({ id: `${id}-trials`, message })),
    ...one('race', errors.race),
    ...one('set', errors.set),
    ...one('pace', errors.pace),
    ...one('tau', errors.tau),
  ];
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
      ...tables.flatMap(({ columns, rows }) => [
        [],
        columns,
        ...rows.map(({ head, cells }) => [head, ...cells]),
      ]),
    ],
  };
}
