import { expect, it, vi } from "vitest";
import type { AskWorker } from "../../lib/link/messages.ts";
import { bringPart, offerPart } from "../../lib/visit/parts.ts";

const part = () => () => undefined;

it("asks for a part again after it did not come, once for all who wait, and never once it is here", async () => {
  const worker = vi.fn(async () => {
    if (worker.mock.calls.length === 1) throw new Error("no");
    offerPart("card", part);
    return null;
  });
  const bring = () => bringPart(worker as unknown as AskWorker, "card");
  const failed = await Promise.allSettled([bring(), bring()]);
  expect(failed.map(({ status }) => status)).toEqual(["rejected", "rejected"]);
  expect(worker).toHaveBeenCalledTimes(1);
  expect(await Promise.all([bring(), bring()])).toEqual([part, part]);
  expect(await bring()).toBe(part);
  expect(worker).toHaveBeenCalledTimes(2);
});
