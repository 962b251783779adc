import { REFERENCE_EXPONENTS } from 'backhalf';
import {
  Board,
  ChoiceField,
  CountField,
  MethodNotes,
  PoolField,
  TimeField,
  TimesField,
} from '~/ui';
import { linesOf } from '~/ui/csv';
import { plausibleTimes } from '~/ui/plausible';
import { type CalculatorProps, useForm } from '~/ui/use-form';
import { junAutumn } from './example';
import { addressOf, type CompareFields, shape } from './fields';
import { exponentText, type Method } from './methods';
import { type CompareResult, viewOf } from './model';
import { meetingOf, Pairs, whyOf } from './Pairs';
import { estimateRows, goalRows, Result } from './Result';
import { SetFields } from './SetFields';

export default function Calculator(props: CalculatorProps<CompareFields>) {
  const form = useForm(props, { id: 'compare', initial: junAutumn, shape });
  const fields = form.fields.value;
  const view = viewOf(fields);
  const { errors, result } = view;
  const unit = view.pool?.unit ?? 'm';
  const chosen = REFERENCE_EXPONENTS[Number(fields.exponent)];

  return (
    <Board
      form={form}
      errors={errors}
      example={junAutumn}
      cleared={{ ...fields, goal: '', swims: '', reps: '' }}
      awaited="The estimates appear"
      answer={result && <Result result={result} />}
      below={
        result && (
          <>
            <Pairs result={result} />
            <MethodNotes notes={result.methods.map(noteOf)} />
          </>
        )
      }
      href={addressOf(fields)}
      csv={result && csvOf(result)}
    >
      <PoolField form={form} error={errors.length} />
      <div class="pair">
        <CountField {...form.field('race')} label={`Race distance, ${unit}`} error={errors.race} />
        <TimeField
          {...form.field('goal')}
          label="Goal, if any"
          optional
          within={plausibleTimes(Number(fields.race) || 100)}
        />
      </div>
      <TimesField
        {...form.field('swims')}
        label={`Races and trials, one a line: distance in ${unit}, then time`}
        hint="Type or paste: 400 4:53.2. Other distances than the race, each swum flat out."
        what="swim"
        reading={view.swims.text}
        errors={errors.swims}
        lines={4}
      />
      <ChoiceField
        {...form.field('exponent')}
        label="A published exponent beside them"
        as="list"
        options={exponents}
      />
      {chosen && (
        <p class="said">
          Of {chosen.what} ({chosen.source}).
        </p>
      )}
      <SetFields form={form} view={view} />
    </Board>
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
      ...tables.flatMap((table) => [...linesOf(table), []]),
      ['Faster', 'Slower', 'Ranges', 'Why they differ'],
      ...pairs,
    ],
  };
}
