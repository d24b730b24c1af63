import { afterEach, describe, expect, it, vi } from "vitest";
import { fetchPicture, PICTURE_LIMIT, PICTURE_TIMEOUT } from "../../lib/pixels/fetch-picture.ts";
import { headOf, pngOf } from "./png-of.ts";

const picture = pngOf(4, 3, () => [200, 40, 60, 255]);
const ADDRESS = "https://cdn.example/i.png";

const answered = (body: BodyInit | null, type?: string) =>
  vi.stubGlobal(
    "fetch",
    async () => new Response(body, type === undefined ? {} : { headers: { "content-type": type } }),
  );

/** A server's answer that ends with its request, as a browser has it. */
const stubFetch = (answer: () => Promise<Response>) =>
  vi.stubGlobal("fetch", async (_: string, { signal }: { signal: AbortSignal }) => {
    const stopped = new Promise<never>((_, failed) =>
      signal.addEventListener("abort", () => failed(signal.reason)),
    );
    const response = await Promise.race([answer(), stopped]);
    const { readable, writable } = new TransformStream();
    response.body?.pipeTo(writable, { signal }).catch(() => undefined);
    stopped.catch(() => undefined);
    return new Response(readable, response);
  });
const bytes = (file: Buffer) => new Blob([new Uint8Array(file)]).stream();
const reasonOf = (signal = new AbortController().signal) =>
  fetchPicture(ADDRESS, signal).then(
    () => "read",
    (error) => String(error),
  );

describe("a picture's file", () => {
  afterEach(() => {
    vi.unstubAllGlobals();
    vi.restoreAllMocks();
  });

  it.each(["image/png", "IMAGE/JPEG", "application/octet-stream", "binary/octet-stream", undefined])(
    "is taken as %s",
    async (type) => {
      answered(bytes(picture), type);
      expect(await reasonOf()).toBe("read");
    },
  );

  it.each(["text/html", "application/json", "image/svg+xml", "text/plain; charset=utf-8", "video/mp4"])(
    "is turned down as %s before a byte of it is read",
    async (type) => {
      const pull = vi.fn();
      answered(new ReadableStream({ pull }, { highWaterMark: 0 }), type);
      expect(await reasonOf()).toContain("This kind of picture cannot be read.");
      expect(pull).not.toHaveBeenCalled();
    },
  );

  it("is a picture by its own bytes, whatever the server calls it", async () => {
    answered("<!doctype html><title>Not found</title>", "image/png");
    expect(await reasonOf()).toContain("This kind of picture cannot be read.");
  });

  it("is left alone where a few bytes would unfold to gigabytes", async () => {
    answered(bytes(headOf(23_000, 23_000)), "image/png");
    expect(await reasonOf()).toContain("The picture is too large to read.");
    answered(bytes(headOf(5_000, 10_000)), "image/png");
    expect(await reasonOf()).toBe("read");
  });

  it("is given up beyond eight megabytes, and nothing more of it is asked for", async () => {
    let sent = 0;
    const ended = vi.fn();
    vi.stubGlobal("fetch", async (_: string, { signal }: RequestInit) => {
      signal?.addEventListener("abort", ended);
      return new Response(
        new ReadableStream({
          pull: (stream) => {
            sent += 1 << 20;
            stream.enqueue(new Uint8Array(1 << 20));
          },
        }),
        { headers: { "content-type": "image/png" } },
      );
    });
    expect(await reasonOf()).toContain("The picture is too large to read.");
    expect(sent).toBeLessThanOrEqual(PICTURE_LIMIT + (3 << 20));
    expect(ended).toHaveBeenCalledOnce();
  });

  it.each([
    ["silent", () => new Promise<Response>(() => {})],
    [
      "trickling",
      async () => new Response(new ReadableStream(), { headers: { "content-type": "image/png" } }),
    ],
  ])("is given up after eight seconds from a server that is %s", async (_, answer) => {
    const time = new AbortController();
    const timeout = vi.spyOn(AbortSignal, "timeout").mockReturnValue(time.signal);
    stubFetch(answer);
    const reason = reasonOf();
    await vi.waitFor(() => expect(timeout).toHaveBeenCalledExactlyOnceWith(PICTURE_TIMEOUT));
    time.abort();
    expect(await reason).toContain("The picture took too long to load.");
    expect(PICTURE_TIMEOUT).toBe(8_000);
  });

  it("ends with the visit", async () => {
    const visit = new AbortController();
    stubFetch(() => new Promise<Response>(() => {}));
    const answer = reasonOf(visit.signal);
    visit.abort();
    expect(await answer).toContain("took too long");
  });
});
