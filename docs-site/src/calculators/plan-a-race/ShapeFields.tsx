import { ChoiceField, TimeField } from '~/ui';
import { creditLabel, edgeTimes, gapLabel, liftLabel, type PlanFields, smallTimes } from './fields';
import type { PlanView } from './model';
import { SwimField } from './SwimField';

interface Props {
  readonly id: string;
  readonly fields: PlanFields;
  readonly view: PlanView;
  readonly onValue: (name: string, text: string) => void;
}

/** How the race is to be swum, and what each way of saying so needs. */
export function ShapeFields({ id, fields, view, onValue }: Props) {
  const { errors, goal, own, pool } = view;
  return (
    <>
      <ChoiceField
        id={`${id}-shape`}
        name="shape"
        label="Shape of the race"
        options={shapes}
        value={fields.shape}
        onValue={(text) => onValue('shape', text)}
      />
      {fields.shape === 'halves' && (
        <div class="row">
          <ChoiceField
            id={`${id}-way`}
            name="way"
            label="Second half"
            options={ways}
            value={fields.way}
            onValue={(text) => onValue('way', text)}
          />
          <TimeField
            id={`${id}-gap`}
            name="gap"
            label={gapLabel(fields.way)}
            value={fields.gap}
            onValue={(text) => onValue('gap', text)}
            within={smallTimes(goal)}
            error={errors.gap}
          />
        </div>
      )}
      {fields.shape === 'own' && (
        <SwimField
          id={id}
          name="own"
          label="Times of the earlier swim"
          hint="Its laps are scaled to the goal, dive and finish with them."
          fields={{ times: fields.own, every: fields.ownEvery, kind: fields.ownKind }}
          text={own}
          pool={pool}
          needed
          onValue={onValue}
        />
      )}
      {(fields.shape === 'even' || fields.shape === 'halves') && (
        <fieldset class="field">
          <legend>Dive and finish, if you plan for them</legend>
          <p class="hint">Nothing is taken off unless you say so.</p>
          <div class="row pair">
            <TimeField
              id={`${id}-credit`}
              name="credit"
              label={creditLabel}
              optional
              value={fields.credit}
              onValue={(text) => onValue('credit', text)}
              within={edgeTimes}
              error={errors.credit}
            />
            <TimeField
              id={`${id}-lift`}
              name="lift"
              label={liftLabel}
              optional
              value={fields.lift}
              onValue={(text) => onValue('lift', text)}
              within={edgeTimes}
              error={errors.lift}
            />
          </div>
        </fieldset>
      )}
    </>
  );
}

const shapes = [
  { value: 'even', label: 'Even' },
  { value: 'halves', label: 'Halves that differ' },
  { value: 'W', label: 'As women’s Olympic finals' },
  { value: 'M', label: 'As men’s Olympic finals' },
  { value: 'own', label: 'As an earlier swim' },
];
const ways = [
  { value: 'faster', label: 'faster' },
  { value: 'slower', label: 'slower' },
];
