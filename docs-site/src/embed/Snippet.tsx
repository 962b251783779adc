import { useSignal } from '@preact/signals';
import { ChoiceField } from '~/ui';
import { snippetOf } from './snippet';

interface Props {
  /** Where the site lives. */
  readonly site: string;
  /** The calculators that can be embedded: the last part of the address, and the title. */
  readonly jobs: readonly { readonly value: string; readonly label: string }[];
}

/** Writes the lines that put a calculator into somebody else's page. */
export default function Snippet({ site, jobs }: Props) {
  const job = useSignal(jobs[0]?.value ?? '');
  const theme = useSignal('auto');
  const said = useSignal('');
  const title = jobs.find(({ value }) => value === job.value)?.label ?? '';
  const code = snippetOf(site, job.value, title, theme.value);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(code);
      said.value = 'Copied.';
    } catch {
      said.value = 'Select the lines and copy them.';
    }
  };
  return (
    <div class="calculator not-content">
      <form onSubmit={(event) => event.preventDefault()}>
        <ChoiceField
          id="embed-job"
          name="job"
          label="Calculator"
          as="list"
          options={jobs}
          value={job.value}
          onValue={(value) => (job.value = value)}
        />
        <ChoiceField
          id="embed-theme"
          name="theme"
          label="Theme"
          options={themes}
          value={theme.value}
          onValue={(value) => (theme.value = value)}
        />
        <div class="field">
          <label for="embed-code">Lines for your page</label>
          <textarea
            id="embed-code"
            class="times notation"
            rows={12}
            readOnly
            value={code}
            spellcheck={false}
          />
        </div>
        <div class="actions">
          <button type="button" class="button" onClick={copy}>
            Copy
          </button>
        </div>
        <p role="status">{said.value}</p>
      </form>
    </div>
  );
}

const themes = [
  { value: 'auto', label: 'As the device' },
  { value: 'light', label: 'Light' },
  { value: 'dark', label: 'Dark' },
];
