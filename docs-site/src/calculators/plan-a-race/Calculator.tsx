import {
  AddressNotice,
  ChoiceField,
  CountField,
  FormActions,
  PoolField,
  type Problem,
  ResultCard,
  ShareBar,
  TimeField,
} from '~/ui';
import { plausibleTimes } from '~/ui/plausible';
import { useForm } from '~/ui/use-form';
import { distanceText } from '~/ui/wording';
import { withDifference } from './drawing';
import { nextFinal } from './example';
import { addressOf, type PlanFields, shape } from './fields';
import { judgedRows } from './Judgement';
import { type PlanResult, type PlanView, viewOf } from './model';
import { Result } from './Result';
import { ShapeFields } from './ShapeFields';
import { SwimField } from './SwimField';

interface Props {
  /** What it starts with; the example unless given. */
  readonly initial?: PlanFields;
  /** Tells two on one page apart. */
  readonly id?: string;
  /** Whether it is alone on its page and may write the address. */
  readonly ownPage?: boolean;
}

export default function Calculator({ initial = nextFinal, id = 'plan', ownPage = false }: Props) {
  const form = useForm(id, initial, shape, ownPage);
  const fields = form.fields.value;
  const view = viewOf(fields);
  const { errors, pool, result } = view;
  const problems = problemsOf(view, fields, id);
  const set = (name: string, text: string) => form.set(name, text);

  return (
    <div class={`calculator not-content${ownPage ? ' own-page' : ''}`} id={id}>
      <AddressNotice problems={form.addressProblems.value} />
      <div class="board">
        <form onSubmit={(event) => event.preventDefault()}>
          <PoolField id={id} fields={fields} onValue={form.set} error={errors.pool} />
          <div class="row pair">
            <CountField
              id={`${id}-distance`}
              name="distance"
              label={`Race distance, ${pool?.unit ?? 'm'}`}
              value={fields.distance}
              onValue={(text) => set('distance', text)}
              error={errors.distance}
            />
            <TimeField
              id={`${id}-goal`}
              name="goal"
              label="Goal time"
              value={fields.goal}
              onValue={(text) => set('goal', text)}
              within={plausibleTimes(view.distance ?? 100)}
              error={errors.goal}
            />
          </div>
          <ShapeFields id={id} fields={fields} view={view} onValue={set} />
          <ChoiceField
            id={`${id}-every`}
            name="every"
            label="One row of the card for every"
            as="list"
            options={view.strides.map((lengths) => rowOption(lengths, pool))}
            value={String(view.stride)}
            onValue={(text) => set('every', text)}
          />
          <SwimField
            id={id}
            name="swum"
            label="After the race: the splits that were swum"
            hint="Type or paste them to lay them beside the plan; till then, leave it empty."
            fields={{ times: fields.swum, every: fields.swumEvery, kind: fields.swumKind }}
            text={view.swum}
            pool={pool}
            onValue={set}
          />
          <FormActions
            form={form}
            example={nextFinal}
            cleared={{ ...fields, goal: '', gap: '', credit: '', lift: '', own: '', swum: '' }}
          />
        </form>
        {result ? (
          <Result
            result={result}
            onDifference={(difference) =>
              form.replace(withDifference(form.fields.value, difference))
            }
          />
        ) : (
          <ResultCard headline={null} sentence="" waiting={waitingFor(problems)} />
        )}
      </div>
      <ShareBar href={addressOf(fields)} problems={problems} csv={result && csvOf(result)} />
    </div>
  );
}

function rowOption(lengths: number, pool: PlanView['pool']) {
  const counted = lengths === 1 ? '1 length' : `${lengths} lengths`;
  const distance = pool && `${distanceText(pool.length * lengths)} ${pool.unit}`;
  return { value: String(lengths), label: distance ? `${distance} (${counted})` : counted };
}

const waitingFor = (problems: readonly Problem[]): string =>
  `The plan appears once this is put right: ${problems.map(({ message }) => message).join(' ')}`;

function problemsOf({ errors, own, swum }: PlanView, fields: PlanFields, id: string) {
  const one = (name: string, message: string | null): Problem[] =>
    message === null ? [] : [{ id: `${id}-${name}`, message }];
  return [
    ...one('length', errors.pool),
    ...one('distance', errors.distance),
    ...one('goal', errors.goal),
    ...one('gap', errors.gap),
    ...one('credit', errors.credit),
    ...one('lift', errors.lift),
    ...(fields.shape === 'own' ? own.errors : []).flatMap((message) => one('own', message)),
    ...swum.errors.flatMap((message) => one('swum', message)),
  ];
}

function csvOf({ plan, card, judged }: PlanResult) {
  const { unit } = plan.pool;
  const judgement = judged ? judgedRows(judged, unit) : null;
  return {
    name: 'race-plan',
    rows: [
      [`Distance (${unit})`, 'Lap', 'Watch'],
      ...card.rows.map(({ distance, text }) => [distanceText(distance), text.lap, text.time]),
      ...(judgement
        ? [[], judgement.columns, ...judgement.rows.map(({ head, cells }) => [head, ...cells])]
        : []),
    ],
  };
}
