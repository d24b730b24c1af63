import { hideAllInHosts } from "../badge/host.ts";
import { VIEWS_MOST } from "../link/messages.ts";
import type { Sitting } from "../link/on-snapshot.ts";
import type { Part } from "../pixels/pixels-of-snapshot.ts";
import { boxInSight } from "./box-in-sight.ts";
import type { Follower } from "./follow-products.ts";
import { paletteText } from "./read-palette.ts";

/** Has a snapshot taken of those pictures that could be read in no other way, and takes in what it shows of them. */
export function sitForSnapshot({ products, learn }: Pick<Follower, "products" | "learn">): Sitting {
  const unread = products().filter(({ palette }) => palette?.swatches.length === 0);
  const seen = unread.flatMap((tracked) => {
    const box = boxInSight(tracked);
    return box ? [{ tracked, source: tracked.source, box }] : [];
  });
  const sitters = seen.slice(0, VIEWS_MOST);
  const end = sitters.length ? hideAllInHosts() : () => undefined;
  const views = sitters.map(({ tracked: { product, slot }, box }) => ({
    box,
    slot,
    text: paletteText(product),
  }));
  let held: typeof sitters = [];
  return {
    views: drawn().then(() => views),
    hear(word) {
      if (word === "taken") {
        end();
        // What moved meanwhile, or was covered, is perhaps not what the snapshot shows.
        held = sitters.filter(({ tracked, box }) => isSame(boxInSight(tracked), box));
        return;
      }
      for (const sitter of held) {
        const palette = word[sitters.indexOf(sitter)];
        if (palette?.swatches.length) void learn(sitter.tracked, sitter.source, palette);
      }
    },
    end,
  };
}

/** Resolves once what was changed before is on the screen: the frame after the next one begins only then. */
async function drawn(): Promise<void> {
  for (let frame = 0; frame < 2; frame++) await new Promise((next) => requestAnimationFrame(next));
}

function isSame(one: Part | null, other: Part): boolean {
  return (
    one !== null &&
    one.left === other.left &&
    one.top === other.top &&
    one.right === other.right &&
    one.bottom === other.bottom
  );
}
