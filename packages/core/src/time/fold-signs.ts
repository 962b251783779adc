/** Nobody writes a time in more characters; keeps a pasted novel cheap. */
export const LONGEST = 64;

/**
 * Folds the ways of writing one sign into one, each character in its place, so that a position in
 * the result is one in the text: wide digits, odd dashes, primes and quotes, blanks, unseen marks.
 */
export function foldSigns(text: string): string {
  return text
    .replace(/[\uff01-\uff5e]/g, (wide) => String.fromCharCode(wide.charCodeAt(0) - 0xfee0))
    .replace(/[‐‑‒–—−]/g, '-')
    .replace(/[“”„″]/g, '"')
    .replace(/[’‘′´`]/g, "'")
    .replace(/[\s\u200b-\u200f\u202a-\u202e\u2060\ufeff]/g, ' ');
}
