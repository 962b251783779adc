import { REFERENCE_EXPONENTS } from 'backhalf';
import {
  AddressNotice,
  ChoiceField,
  CountField,
  FormActions,
  MethodNotes,
  PoolField,
  type Problem,
  ResultCard,
  ShareBar,
  TimeField,
  TimesField,
} from '~/ui';
import { plausibleTimes } from '~/ui/plausible';
import { useForm } from '~/ui/use-form';
import { junAutumn } from './example';
import { addressOf, type CompareFields, shape } from './fields';
import { exponentText, type Method } from './methods';
import { type CompareResult, type CompareView, viewOf } from './model';
import { meetingOf, Pairs, whyOf } from './Pairs';
import { estimateRows, goalRows, Result } from './Result';
import { SetFields } from './SetFields';

interface Props {
  /** What it starts with; the example unless given. */
  readonly initial?: CompareFields;
  /** Tells two on one page apart. */
  readonly id?: string;
  /** Whether it is alone on its page and may write the address. */
  readonly ownPage?: boolean;
}

export default function Calculator({
  initial = junAutumn,
  id = 'compare',
  ownPage = false,
}: Props) {
  const form = useForm(id, initial, shape, ownPage);
  const fields = form.fields.value;
  const view = viewOf(fields);
  const { errors, result } = view;
  const problems = problemsOf(view, id);
  const unit = view.pool?.unit ?? 'm';
  const chosen = REFERENCE_EXPONENTS[Number(fields.exponent)];

  return (
    <div class={`calculator not-content${ownPage ? ' own-page' : ''}`} id={id}>
      <AddressNotice problems={form.addressProblems.value} />
      <div class="board">
        <form onSubmit={(event) => event.preventDefault()}>
          <PoolField id={id} fields={fields} onValue={form.set} error={errors.pool} />
          <div class="row pair level">
            <CountField
              id={`${id}-race`}
              name="race"
              label={`Race distance, ${unit}`}
              value={fields.race}
              onValue={(text) => form.set('race', text)}
              error={errors.race}
            />
            <TimeField
              id={`${id}-goal`}
              name="goal"
              label="Goal, if any"
              optional
              value={fields.goal}
              onValue={(text) => form.set('goal', text)}
              within={plausibleTimes(Number(fields.race) || 100)}
            />
          </div>
          <TimesField
            id={`${id}-swims`}
            name="swims"
            label={`Races and trials, one a line: distance in ${unit}, then time`}
            hint="Type or paste: 400 4:53.2. Other distances than the race, each swum flat out."
            what="swim"
            value={fields.swims}
            onValue={(text) => form.set('swims', text)}
            reading={view.swims.text}
            errors={errors.swims}
            lines={4}
          />
          <ChoiceField
            id={`${id}-exponent`}
            name="exponent"
            label="A published exponent beside them"
            as="list"
            options={exponents}
            value={fields.exponent}
            onValue={(text) => form.set('exponent', text)}
          />
          {chosen && (
            <p class="said">
              Of {chosen.what} ({chosen.source}).
            </p>
          )}
          <SetFields id={id} form={form} view={view} />
          <FormActions
            form={form}
            example={junAutumn}
            cleared={{ ...fields, goal: '', swims: '', reps: '' }}
          />
        </form>
        {result ? (
          <Result result={result} />
        ) : (
          <ResultCard headline={null} sentence="" waiting={waitingFor(problems)} />
        )}
      </div>
      {result && <Pairs result={result} />}
      {result && <MethodNotes notes={result.methods.map(noteOf)} />}
      <ShareBar href={addressOf(fields)} problems={problems} csv={result && csvOf(result)} />
    </div>
  );
}

const exponents = [
  { value: 'none', label: 'None' },
  ...REFERENCE_EXPONENTS.map(({ exponent, what }, i) => ({
    value: String(i),
    label: `${exponentText(exponent)}: ${what}`,
  })),
];

const noteOf = ({ name, estimate, lacks }: Method) => ({
  name,
  assumptions: estimate?.assumptions ?? [],
  cautions: estimate?.cautions.map(({ message }) => message) ?? [],
  lacks: lacks === null ? [] : [lacks],
});

const waitingFor = (problems: readonly Problem[]): string =>
  `The estimates appear once this is put right: ${problems.map(({ message }) => message).join(' ')}`;

function problemsOf({ errors, pool }: CompareView, id: string): readonly Problem[] {
  const one = (name: string, message: string | null) =>
    message === null ? [] : [{ id: `${id}-${name}`, message }];
  return [
    ...one('length', pool === null ? errors.pool : null),
    ...one('race', errors.race),
    ...one('goal', errors.goal),
    ...errors.swims.map((message) => ({ id: `${id}-swims`, message })),
    ...one('distance', errors.distance),
    ...errors.reps.map((message) => ({ id: `${id}-reps`, message })),
    ...one('rest', errors.rest),
  ];
}

function csvOf(result: CompareResult) {
  const { answered, comparison } = result;
  const tables = [estimateRows(result), ...(comparison.goal ? [goalRows(result)] : [])];
  const pairs = comparison.pairs.map((pair) => [
    answered[pair.faster]?.name ?? '',
    answered[pair.slower]?.name ?? '',
    meetingOf(pair),
    whyOf(pair, answered),
  ]);
  return {
    name: 'estimates',
    rows: [
      ...tables.flatMap(({ columns, rows }) => [
        columns,
        ...rows.map(({ head, cells }) => [head, ...cells]),
        [],
      ]),
      ['Faster', 'Slower', 'Ranges', 'Why they differ'],
      ...pairs,
    ],
  };
}
