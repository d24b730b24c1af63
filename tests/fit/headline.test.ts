import { describe, expect, it } from "vitest";
import { judge, prepareCloset } from "../../lib/fit/judge.ts";
import type { OwnedPiece } from "../../lib/fit/prepared-piece.ts";
import type { Candidate } from "../../lib/fit/verdict.ts";
import { seenOnScreen } from "../../lib/sample/seen-on-screen.ts";
import { owned, product, withConfidence } from "./invented.ts";

const verdictOf = (candidate: Candidate, ...pieces: readonly OwnedPiece[]) =>
  judge(candidate, prepareCloset(pieces));

describe("headlines", () => {
  const blazer = owned("Navy blazer", "layer", "#252c48");
  const redSkirt = owned("Red skirt", "bottom", "#c8102e");
  it.each<[string, string, Candidate, readonly OwnedPiece[]]>([
    ["unreadable", "Can't read this picture", product("top"), [redSkirt]],
    ["empty-closet", "Your closet is empty", product("top", "#c8102e"), []],
    ["duplicate", "You own this red", product("bottom", "#c8102e"), [redSkirt]],
    ["duplicate", "Close to a red you own", product("bottom", "#b51c33"), [redSkirt]],
    ["duplicate", "Close to a red you own", withConfidence(0.3, "bottom", "#c8102e"), [redSkirt]],
    ["set", "A set with your navy blazer", product("bottom", "#252c48"), [blazer]],
    ["set", "Nearly a set with your navy blazer", product("bottom", "#2c3a5c"), [blazer]],
    ["set", "A set with 2 of yours", product("bottom", "#252c48"), [blazer, owned("b", "top", "#252c48")]],
    ["set", "Same shade as your navy blazer", product(null, "#252c48"), [blazer]],
    ["looks", "Finishes 1 look", product("top", "#00843d"), [redSkirt]],
    ["looks", "May finish 1 look", withConfidence(0.3, "top", "#00843d"), [redSkirt]],
    ["goes", "Goes with 1 of yours", product("bag", "#00843d"), [redSkirt]],
    ["neutral-only", "Only goes with black", product("top", "#c8102e"), [owned("b", "bottom", "#111111")]],
    ["nothing", "Nothing to wear it with yet", product("top", "#c8102e"), [owned("t", "top", "#224fa8")]],
    [
      "nothing",
      "Nothing yet but your old jeans",
      product("top", "#8fb935"),
      [owned("Old jeans", "bottom", "#44628c")],
    ],
  ])("%s: %s", (kind, headline, candidate, closet) => {
    expect(verdictOf(candidate, ...closet)).toMatchObject({ kind, headline });
  });

  it("counts what it speaks of", () => {
    const closet = [redSkirt, owned("Red trousers", "bottom", "#c8102e"), blazer];
    expect(verdictOf(product("bottom", "#c8102e"), ...closet)).toMatchObject({ kind: "duplicate", count: 2 });
    expect(verdictOf(product("top", "#00843d"), ...closet)).toMatchObject({ kind: "looks", count: 2 });
    expect(verdictOf(product("top"), ...closet).count).toBe(0);
  });

  it("does not call black shoes a set with black trousers", () => {
    const trousers = owned("Black trousers", "bottom", "#111111");
    expect(verdictOf(product("shoes", "#111111"), trousers).kind).not.toBe("set");
    expect(verdictOf(product("layer", "#111111"), trousers).headline).toBe("A set with your black trousers");
  });

  it("cuts a long name between words", () => {
    const long = owned("Double-breasted navy blazer of a very long name", "layer", "#252c48");
    expect(verdictOf(product("bottom", "#252c48"), long).headline).toBe(
      "A set with your double-breasted navy blazer…",
    );
  });
});

describe("caution", () => {
  const skirt = owned("Red skirt", "bottom", "#c8102e");

  it("is said of a close match that rests on a photo", () => {
    expect(verdictOf(product("bottom", "#c8102e"), skirt).caution).toContain("daylight");
    expect(verdictOf(product("top", "#c8102e"), skirt).caution).toContain("daylight");
    expect(verdictOf(product("top", "#00843d"), skirt).caution).toBeNull();
  });

  it("is said of a picture that was read from the screen, whose words are hedged", () => {
    const sure = product("bottom", "#c8102e");
    const verdict = verdictOf({ ...sure, palette: seenOnScreen(sure.palette) }, skirt);
    expect(verdict).toMatchObject({
      headline: "Close to a red you own",
      caution: expect.stringContaining("screen"),
    });
  });

  it("is said of a picture that the sampler is not sure of, not of a person's own word", () => {
    const unsure = withConfidence(0.2, "top", "#00843d");
    expect(verdictOf(unsure, skirt).caution).toContain("not certain");
    const corrected = { ...product("bottom", "#c8102e").palette, evidence: ["person"] as const };
    expect(verdictOf({ ...unsure, palette: corrected }, skirt).caution).toBeNull();
  });
});
