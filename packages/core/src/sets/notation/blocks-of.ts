import type { SetBlock } from '../planned-set.js';
import { readBlocks } from './read-blocks.js';
import { Reader } from './reader.js';
import { writeSet } from './write-set.js';

/** The blocks of a set out of plain data: written, each field checked, and read for what they say together. */
export function blocksOf(value: unknown): readonly SetBlock[] {
  return readBlocks(new Reader(writeSet(value)));
}
