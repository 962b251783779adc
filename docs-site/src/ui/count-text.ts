interface Limits {
  readonly least?: number;
  readonly most?: number;
  /** Whether a part of one will do. */
  readonly whole?: boolean;
}

export interface CountText {
  readonly count: number | null;
  readonly error: string | null;
}

/**
 * Reads a count or a length: digits, a decimal comma or point or a fraction (33 1/3), and a unit typed
 * behind it.
 */
export function readCountText(text: string, label: string, limits: Limits = {}): CountText {
  const { least = 1, most = 100_000, whole = true } = limits;
  const not = (error: string): CountText => ({ count: null, error });
  const plain = text
    .replace(/[½⅓⅔¼¾]/g, ' $&')
    .normalize('NFKC')
    .replace('⁄', '/')
    .trim();
  if (plain === '') return not(`Enter the ${label.charAt(0).toLowerCase()}${label.slice(1)}.`);
  const [, digits, top = '0', under = '1'] =
    /^(\d{1,9}(?:[.,]\d{1,9})?)(?:\s+(\d)\/([1-9]))?\s*[a-z]*$/i.exec(plain) ?? [];
  if (digits === undefined) return not(`${label} must be a number, like ${least * 4}.`);
  const count = Number(digits.replace(',', '.')) + Number(top) / Number(under);
  if (whole && !Number.isInteger(count)) return not(`${label} must be a whole number.`);
  if (count < least) return not(`${label} must be ${least} or more.`);
  if (count > most) return not(`${label} must be ${most} or less.`);
  return { count, error: null };
}
