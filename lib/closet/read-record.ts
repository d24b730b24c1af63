import * as v from "valibot";

/** Fields without which a record still means something. */
const SPARABLE = ["picture", "productKey"] as const;

/**
 * What a stored record says, or null where it is broken. A broken picture or product key alone is left out
 * and the rest kept.
 */
export function readRecord<T>(schema: v.GenericSchema<unknown, T>, record: unknown): T | null {
  const whole = v.safeParse(schema, record);
  if (whole.success) return whole.output;
  if (typeof record !== "object" || record === null) return null;
  const broken = new Set(whole.issues.map((issue) => issue.path?.[0]?.key));
  const spared = Object.fromEntries(
    Object.entries(record).filter(([key]) => !(SPARABLE.some((field) => field === key) && broken.has(key))),
  );
  const rest = v.safeParse(schema, spared);
  return rest.success ? rest.output : null;
}
