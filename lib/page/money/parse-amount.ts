/** Currencies whose smallest part is a thousandth (ISO 4217): there "12.500" is twelve and a half. */
export const THOUSANDTHS: ReadonlySet<string> = new Set(["KWD", "BHD", "OMR", "JOD", "TND"]);

/**
 * The value of a number as a price tag writes it: "1.299,00", "1,24,999", "1’299.00", "450/000", "10000,00". A single
 * separator before exactly three digits parts thousands, unless the currency counts in `thousandths`.
 */
export function parseAmount(written: string, thousandths = false): number {
  const text = written.replace(/[ '’٬/]/g, "").replaceAll("٫", ".");
  const last = Math.max(text.lastIndexOf("."), text.lastIndexOf(","));
  if (last < 0) return Number(text);
  const fraction = text.slice(last + 1);
  const whole = text.slice(0, last);
  const marks = new Set(text.replace(/\d/g, ""));
  const many = text.replace(/\d/g, "").length > 1;
  const thousands = fraction.length === 3 && (many ? marks.size === 1 : !/^0?$/.test(whole) && !thousandths);
  const digits = whole.replace(/[.,]/g, "");
  return Number(thousands ? digits + fraction : `${digits}.${fraction}`);
}
