// Charts are not among these: they are imported by their own files, so that only what draws one carries it.
export { Board } from './Board';
export { ChoiceField } from './ChoiceField';
export { CountField } from './CountField';
export { ErrorSummary, type Problem } from './ErrorSummary';
export { Figure } from './Figure';
export { FormActions } from './FormActions';
export { Frame } from './Frame';
export { type MethodNote, MethodNotes } from './MethodNotes';
export { NumberTable } from './NumberTable';
export { OpenInCalculator } from './OpenInCalculator';
export { PoolField } from './PoolField';
export { RepsFields } from './RepsFields';
export { type Figured, ResultCard, type ResultCardProps } from './ResultCard';
export { Safety } from './Safety';
export { ShareBar } from './ShareBar';
export { TimeField } from './TimeField';
export { TimesField } from './TimesField';
