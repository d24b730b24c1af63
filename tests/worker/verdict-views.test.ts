import { expect, it } from "vitest";
import { judge, prepareCloset } from "../../lib/fit/judge.ts";
import { explained } from "../../lib/worker/verdict-views.ts";
import { owned, product } from "../fit/invented.ts";

it("explains with values alone, since Firefox leaves getters out of messages", () => {
  const candidate = product("one-piece", "#1f4fbf");
  const verdict = judge(candidate, prepareCloset([owned("coat", "layer", "#c98a2b")]));
  const sent = explained(candidate, verdict, new Map(), false);
  const parts = Object.entries(Object.getOwnPropertyDescriptors(sent.verdict));
  expect(parts.filter(([, { get }]) => get).map(([name]) => name)).toEqual([]);
  expect(sent.verdict).toEqual(verdict);
  expect(sent.verdict.pieces.map(({ pieceId }) => pieceId)).toEqual(["coat"]);
});
