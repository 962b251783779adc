import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import { ErrorSummary, FormActions, Frame, type Problem, ResultCard, ShareBar } from '~/ui';
import { problemsOf, waitingFor } from '~/ui/problems';
import { type CalculatorProps, useForm } from '~/ui/use-form';
import { saltmarsh } from './example';
import { type DeckFields, shape } from './fields';
import { addressOf, viewOf } from './model';
import { csvOf, outcomeOf } from './Outcome';
import { SetupFields } from './SetupFields';
import { StartButton } from './StartButton';
import { Timing } from './Timing';
import { withWord } from './tapping';
import { useClock } from './use-clock';
import { useKept } from './use-kept';

const longest = 4 * 3600 * 1000; // no set takes four hours: an old address must not time on

export default function Calculator(props: CalculatorProps<DeckFields>) {
  const form = useForm(props, { id: 'deck', initial: saltmarsh, shape });
  const clock = useClock();
  const refused = useSignal(0);
  const fresh = useSignal(false);
  useKept(form.fields, form.ownPage);
  const fields = form.fields.value;
  const view = useMemo(() => viewOf(fields), [fields]);
  const { touches = [], ...errors } = view.errors;
  const problems = problemsOf(form.id, errors);
  const timing = fields.phase === 'timing' && view.plan !== null;

  useEffect(() => {
    if (timing && !(clock() - Number(fields.started) < longest)) form.set('phase', 'over');
  }, [timing]);

  const start = (timeStamp: number) => {
    if (view.plan === null) {
      refused.value += 1;
      return;
    }
    fresh.value = true;
    const started = String(Math.round(clock(timeStamp)));
    form.replace({ ...fields, phase: 'timing', started, touches: '' });
  };
  const onWord = (index: number, word: Parameters<typeof withWord>[2]) =>
    form.set('touches', withWord(form.fields.value.touches, index, word));
  const outcome = outcomeOf(fields, view, onWord);

  return (
    <Frame form={form} notices={touches}>
      {timing ? (
        <Timing form={form} view={view} clock={clock} fresh={fresh.value} />
      ) : (
        <div class="board">
          <form onSubmit={(event) => event.preventDefault()}>
            <SetupFields form={form} view={view} />
            {refused.value > 0 && problems.length > 0 && (
              <ErrorSummary key={refused.value} problems={problems} />
            )}
            <StartButton onStart={start} />
            <FormActions form={form} example={saltmarsh} cleared={cleared}>
              {fields.started !== '' && (
                <button
                  type="button"
                  class="button quiet"
                  onClick={() => form.set('phase', 'timing')}
                >
                  Time on
                </button>
              )}
            </FormActions>
          </form>
          <ResultCard {...(outcome ?? waitFor(problems, view.misfit))} />
        </div>
      )}
      {!timing && (
        <ShareBar
          href={addressOf(fields)}
          problems={problems}
          csv={outcome && { name: 'timed-set', rows: csvOf(view) ?? [] }}
        />
      )}
    </Frame>
  );
}

const cleared: DeckFields = {
  ...saltmarsh,
  swimmers: '',
  phase: 'ready',
  started: '',
  touches: '',
};

const ready = 'Press Start as the first swimmer leaves; then tap each touch.';

const waitFor = (problems: readonly Problem[], misfit: string | null) => ({
  headline: null,
  sentence: '',
  waiting:
    problems.length === 0
      ? `${misfit ?? ''} ${ready}`.trim()
      : waitingFor('The set can start', problems),
});
