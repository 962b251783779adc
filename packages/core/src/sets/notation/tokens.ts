import { foldSigns } from '../../time/fold-signs.js';

/** A piece of a text: a word in small letters, a number or time, a sign, a line end; '' at the end. */
export interface Token {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/** A comment, and which token comes after it. */
export interface Comment {
  readonly text: string;
  readonly start: number;
  readonly before: number;
}

// A colon belongs to the digits behind it (`:45`), but not in `r:10` or `WU:400`.
// A comma before one or two digits is a decimal comma, unless they begin a set: `on 1:30,4 x 50`.
const TOKEN =
  /(?:#|\/\/)([^\n]*)|[a-z]+|(?:(?<![a-z]):(?=\d\d?(?!\d)))?\d+(?:[:.']\d+)*(?:,\d{1,2}(?![\d:]| *[x×*]))?|\(-\)|->|''|\n|[^ ]/giu;

/** Cuts a text into its pieces, each with its place. A line that holds only a comment is no line. */
export function tokensOf(input: string): {
  tokens: readonly Token[];
  comments: readonly Comment[];
} {
  const tokens: Token[] = [];
  const comments: Comment[] = [];
  const lines = input.replace(/\r(?!\n)/g, '\n').replace(/[^\n]+/g, (line) => foldSigns(line));
  let line = ''; // what the line has held so far
  for (const { 0: piece, 1: said, index: start } of lines.matchAll(TOKEN)) {
    const end = start + piece.length;
    if (said !== undefined) {
      const text = input.slice(end - said.length, end).trim();
      comments.push({ text, start, before: tokens.length });
    } else if (piece !== '\n' || line !== 'comment') {
      tokens.push({ text: piece.toLowerCase(), start, end });
    }
    line = piece === '\n' ? '' : said === undefined ? 'set' : line || 'comment';
  }
  const { length } = input;
  tokens.push({ text: '', start: length, end: length });
  return { tokens, comments };
}
