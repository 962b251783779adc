import { ErrorSummary } from './ErrorSummary';

/** What the address held and could not be used; nothing where all was well. */
export const AddressNotice = ({ problems }: { readonly problems: readonly string[] }) =>
  problems.length === 0 ? null : (
    <ErrorSummary
      title="The address could not be read in full"
      problems={problems.map((message) => ({ id: null, message }))}
    />
  );
