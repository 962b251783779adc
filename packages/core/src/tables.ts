// The entry point `backhalf/tables`: apart, so that the core stays free of the parser it carries.

export type { Separator } from './tables/cells.js';
export {
  type RefusedLine,
  readSplitTable,
  type SplitTable,
  type SplitTableOptions,
  type TableSwim,
} from './tables/split-table.js';
