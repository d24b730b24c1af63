import { RELATIONS } from "./relation-name.ts";

/** The schemes of a set of colours: every relation of two, and the one that needs four; trade terms. */
export const SCHEMES = [...RELATIONS, "tetradic"] as const;

export type SchemeName = (typeof SCHEMES)[number];
