/**
 * The form results are printed in, `33.50` or `1:05.30` or `1:02:03.45`, at one go: a table holds
 * thousands of them, and each has one reading. Null for any other text, such as `5.30`.
 */
export function plainTime(text: string): number | null {
  if (text.length < 5) return null;
  const padded = text.length % 3 === 1 ? `0${text}` : text; // 01:05.30
  const end = padded.length;
  if ((end !== 5 && end !== 8 && end !== 11) || padded[end - 3] !== '.') return null;

  const seconds = twoDigits(padded, end - 5);
  const minutes = end > 5 ? twoDigits(padded, end - 8) : 0;
  const hours = end > 8 ? twoDigits(padded, end - 11) : 0;
  if (end > 5 && (padded[end - 6] !== ':' || seconds > 59)) return null;
  if (end > 8 && (padded[end - 9] !== ':' || minutes > 59)) return null;
  const time = ((hours * 60 + minutes) * 60 + seconds) * 100 + twoDigits(padded, end - 2);
  return time >= 0 ? time : null; // not a number where a digit was none
}

function twoDigits(text: string, at: number): number {
  const tens = text.charCodeAt(at) - 48;
  const ones = text.charCodeAt(at + 1) - 48;
  return tens >= 0 && tens <= 9 && ones >= 0 && ones <= 9 ? tens * 10 + ones : Number.NaN;
}
