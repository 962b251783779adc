import { hundredths, splitsFromLaps } from 'backhalf';
import type { ComponentChild } from 'preact';
import { ErrorSummary } from './ErrorSummary';
import {
  ChoiceField,
  CountField,
  Figure,
  OpenInCalculator,
  ResultCard,
  Safety,
  ShareBar,
  TimeField,
  TimesField,
} from './index';
import { SplitChart } from './SplitChart';
import { SplitTable } from './SplitTable';
import { readTimesText } from './times-text';

interface State {
  readonly piece: string;
  readonly name: string;
  readonly show: ComponentChild;
}

const swim = (every: number, laps: readonly number[]) =>
  splitsFromLaps(every, laps.map(hundredths));
const heat = swim(50, [2950, 3180, 3260, 3290]);
const final = swim(50, [3010, 3150, 3175, 3120]);
const long = swim(
  50,
  Array.from({ length: 40 }, (_, i) => 3300 + ((i * 37) % 60) - (i === 0 ? 180 : 0)),
);

const ignore = () => {};

const timeField = (name: string, value: string, rest = {}): State => ({
  piece: 'TimeField',
  name,
  show: (
    <TimeField
      id={`time-${name.replaceAll(' ', '-')}`}
      name="time"
      label="Time of the swim"
      hint="1:05.3, or 1.05,3"
      value={value}
      onValue={ignore}
      {...rest}
    />
  ),
});

const timesField = (name: string, value: string, errors: readonly string[] = []): State => ({
  piece: 'TimesField',
  name,
  show: (
    <TimesField
      id={`times-${name.replaceAll(' ', '-')}`}
      name="times"
      label="Times"
      what="lap"
      value={value}
      onValue={ignore}
      reading={readTimesText(value, { label: 'Lap', every: 50, running: false })}
      errors={errors}
    />
  ),
});

/** Every state of every shared piece that a person can meet, by name. */
export const states: readonly State[] = [
  timeField('empty', ''),
  timeField('as written', '1:05.30'),
  timeField('decimal comma', '1.05,3'),
  timeField('two readings', '105'),
  timeField('a reading chosen', '105→1:05.00'),
  timeField('not readable', '1:75'),
  timeField('refused by the calculator', '1:05.30', {
    error: 'Laps add up to 1:06.10. Change one of them.',
  }),
  timesField('a column', '29.50\n31.80\n32.60\n32.90'),
  timesField('a table from a spreadsheet', 'Lap\tTime\n1\t29,50\n2\t31,80\n3\t32,60'),
  timesField('one unclear', '29.50\n105\n32.60'),
  timesField('error after paste', '29.50\nsoon\n32.60', [
    'Lap 2: “soon” is no time; write one like 33.50 or 1:05.3.',
  ]),
  {
    piece: 'CountField',
    name: 'plain',
    show: <CountField id="count" name="count" label="Reps" value="8" onValue={ignore} />,
  },
  {
    piece: 'CountField',
    name: 'error',
    show: (
      <CountField
        id="count-bad"
        name="count"
        label="Reps"
        value="0"
        onValue={ignore}
        error="Reps must be 1 or more."
      />
    ),
  },
  {
    piece: 'ChoiceField',
    name: 'side by side',
    show: (
      <ChoiceField
        id="choice"
        name="choice"
        label="Start"
        options={[
          { value: 'dive', label: 'Dive' },
          { value: 'push', label: 'Push-off' },
        ]}
        value="dive"
        onValue={ignore}
      />
    ),
  },
  {
    piece: 'ChoiceField',
    name: 'list',
    show: (
      <ChoiceField
        id="choice-list"
        name="choice-list"
        label="Event"
        as="list"
        options={['200', '400', '800', '1500'].map((value) => ({ value, label: `${value} m` }))}
        value="400"
        onValue={ignore}
      />
    ),
  },
  {
    piece: 'ResultCard',
    name: 'with cautions and working',
    show: (
      <ResultCard
        headline={{ label: 'Second half against the first', figure: '+4.20', note: 'positive' }}
        beside={[
          { label: 'First half', figure: '1:01.30' },
          { label: 'Second half', figure: '1:05.50' },
        ]}
        cautions={['The first half holds the dive.', 'Only two reps were read.']}
        sentence="Second half 4.20 slower: a positive split."
        working={<p>The time at halfway is the first half.</p>}
      />
    ),
  },
  {
    piece: 'ResultCard',
    name: 'waiting',
    show: <ResultCard headline={null} sentence="" waiting="The halves appear once lap 2 reads." />,
  },
  {
    piece: 'SplitChart',
    name: 'one swim',
    show: (
      <Figure label="One swim">
        <SplitChart swims={[heat]} names={['Heat']} unit="m" finding="The laps slow down." />
        <SplitTable caption="Laps of the heat" swims={[heat]} names={['Heat']} unit="m" />
      </Figure>
    ),
  },
  {
    piece: 'SplitChart',
    name: 'two swims',
    show: (
      <Figure label="Two swims">
        <SplitChart
          swims={[heat, final]}
          names={['Heat', 'Final']}
          unit="yd"
          finding="The heat slows down, the final does not."
        />
        <SplitTable
          caption="Both swims"
          swims={[heat, final]}
          names={['Heat', 'Final']}
          unit="yd"
        />
      </Figure>
    ),
  },
  {
    piece: 'SplitChart',
    name: '40 laps',
    show: (
      <Figure label="A long swim">
        <SplitChart swims={[long]} names={['Swim']} unit="m" finding="The laps stay level." />
        <SplitTable caption="Forty laps" swims={[long]} names={['Swim']} unit="m" />
      </Figure>
    ),
  },
  {
    piece: 'ErrorSummary',
    name: 'two problems',
    show: (
      <ErrorSummary
        problems={[
          { id: 'time-empty', message: 'Enter the time of the swim.' },
          { id: null, message: 'The address was written by another version.' },
        ]}
      />
    ),
  },
  {
    piece: 'ShareBar',
    name: 'all three',
    show: <ShareBar href="/" problems={[]} csv={{ name: 'table', rows: [['a'], ['1']] }} />,
  },
  { piece: 'Safety', name: 'all', show: <Safety about={['effort', 'breath', 'open water']} /> },
  {
    piece: 'OpenInCalculator',
    name: 'plain',
    show: <OpenInCalculator href="/calculators/halves/">Open it</OpenInCalculator>,
  },
];

export default function States() {
  return (
    <>
      {states.map(({ piece, name, show }) => (
        <section key={`${piece} ${name}`} aria-label={`${piece}, ${name}`}>
          <h2>
            {piece}: {name}
          </h2>
          <div class="calculator">{show}</div>
        </section>
      ))}
    </>
  );
}
