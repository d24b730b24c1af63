import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CARD_GAP, placeBeside } from "../../lib/badge/place-beside.ts";

const view = { width: 1000, height: 700 };
const card = { width: 300, height: 400 };

describe("placeBeside", () => {
  it("puts a card to the right, else to the left, lower edges aligned", () => {
    expect(placeBeside({ left: 100, top: 500, width: 150, height: 30 }, card, view)).toEqual({
      left: 258,
      top: 130,
    });
    expect(placeBeside({ left: 800, top: 500, width: 150, height: 30 }, card, view)).toEqual({
      left: 492,
      top: 130,
    });
  });

  it("goes below or above where neither side has room", () => {
    const narrow = { width: 400, height: 1200 };
    expect(placeBeside({ left: 50, top: 100, width: 150, height: 30 }, card, narrow)).toEqual({
      left: 50,
      top: 138,
    });
    expect(placeBeside({ left: 50, top: 900, width: 150, height: 30 }, card, narrow)).toEqual({
      left: 50,
      top: 492,
    });
  });

  it("keeps every card that fits inside the view, wherever its badge is", () => {
    const place = fc.integer({ min: -500, max: 2500 });
    const size = fc.integer({ min: 24, max: 400 });
    fc.assert(
      fc.property(place, place, size, size, size, size, (left, top, width, height, cardWidth, cardHeight) => {
        const room = { width: cardWidth + 2 * CARD_GAP + 100, height: cardHeight + 2 * CARD_GAP + 50 };
        const spot = placeBeside(
          { left, top, width, height },
          { width: cardWidth, height: cardHeight },
          room,
        );
        expect(spot.left).toBeGreaterThanOrEqual(CARD_GAP);
        expect(spot.top).toBeGreaterThanOrEqual(CARD_GAP);
        expect(spot.left + cardWidth).toBeLessThanOrEqual(room.width - CARD_GAP);
        expect(spot.top + cardHeight).toBeLessThanOrEqual(room.height - CARD_GAP);
      }),
    );
  });
});
