import { type Signal, useSignal } from '@preact/signals';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import { type Fields, queryOf, readQuery, type Shape, throttled } from './address';

/** What every calculator takes. */
export interface CalculatorProps<F extends Fields> {
  /** What it starts with; the example unless given. */
  readonly initial?: F;
  /** Tells two on one page apart. */
  readonly id?: string;
  /** Whether it is alone on its page and may write the address. */
  readonly ownPage?: boolean;
}

/** What a calculator is where it is not told otherwise. */
interface Usual<F extends Fields> {
  readonly initial: F;
  readonly id: string;
  readonly shape: Shape<F>;
}

/** What ties an input to one of the form's texts. */
export interface Bound {
  readonly id: string;
  readonly name: string;
  readonly value: string;
  readonly onValue: (text: string) => void;
}

export interface Form<F extends Fields> {
  readonly id: string;
  readonly ownPage: boolean;
  readonly fields: Signal<F>;
  /** What the address held and could not be used, in sentences. */
  readonly addressProblems: Signal<readonly string[]>;
  /** What stood in the fields before something other than typing replaced it. */
  readonly before: Signal<F | null>;
  set(name: keyof F & string, text: string): void;
  /** The field of this name, for the input that shows it. */
  field(name: keyof F & string): Bound;
  /** Fills the fields for a person: with the example, with nothing, with a mended swim. */
  replace(fields: F): void;
  /** Puts back what {@link replace} took away; once more, and it is undone. */
  putBack(): void;
}

/** A form of whatever fields, for a piece that shows some of them. */
export type AnyForm = Pick<Form<Fields>, 'id' | 'field'>;

/**
 * A calculator's fields. It wakes with what the server drew, then takes what the address holds or
 * what was typed before it woke. Only a calculator on a page of its own (`ownPage`) writes the
 * address: two examples on one page would fight over it.
 */
export function useForm<F extends Fields>(props: CalculatorProps<F>, usual: Usual<F>): Form<F> {
  const { initial, id, shape, ownPage = false } = { ...usual, ...props };
  const fields = useSignal(initial);
  const addressProblems = useSignal<readonly string[]>([]);
  const typed = useRef<Partial<F> | null>(null);
  if (typed.current === null) typed.current = typedBefore<F>(id, initial);

  const write = useMemo(
    () =>
      throttled((now: F) => {
        try {
          history.replaceState(history.state, '', `?${queryOf(now)}${location.hash}`);
        } catch {
          // The browser says it is too much; the next change writes it.
        }
      }),
    [],
  );
  const put = (now: F) => {
    fields.value = now;
    if (ownPage) write(now);
  };
  const before = useSignal<F | null>(null);
  const replace = (now: F) => {
    before.value = fields.value;
    put(now);
  };

  useEffect(() => {
    const reading = ownPage ? readQuery(location.search, initial, shape) : null;
    if (reading !== null) {
      fields.value = reading.fields;
      addressProblems.value = reading.problems;
    }
    if (Object.keys(typed.current ?? {}).length > 0) {
      put({ ...fields.value, ...typed.current });
    }
  }, []);

  const set = (name: keyof F & string, text: string) => put({ ...fields.value, [name]: text });
  return {
    id,
    ownPage,
    fields,
    addressProblems,
    before,
    set,
    field: (name) => ({
      id: `${id}-${name}`,
      name,
      value: fields.value[name] ?? '',
      onValue: (text) => set(name, text),
    }),
    replace,
    putBack: () => before.value && replace(before.value),
  };
}

/** What stands in the page's fields and differs from what the server wrote there. */
function typedBefore<F extends Fields>(id: string, initial: F): Partial<F> {
  if (typeof document === 'undefined') return {};
  const form = document.getElementById(id)?.querySelector('form');
  if (!form) return {};
  const now = [...new FormData(form)].filter(
    ([name, text]) => typeof text === 'string' && name in initial && text !== initial[name],
  );
  return Object.fromEntries(now) as Partial<F>;
}
