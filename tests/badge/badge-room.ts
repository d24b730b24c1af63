/** The room as one script for a real page, with an invented product on every picture. */

import type { Badge } from "../../lib/badge/badge.ts";
import { badgeLayer } from "../../lib/badge/badge-layer.ts";
import type { BadgeModel } from "../../lib/badge/badge-model.ts";
import { makeCard } from "../../lib/badge/card.ts";
import type { CardActions, CardModel } from "../../lib/badge/card-model.ts";
import { exampleBadge, exampleCard } from "./example-card.ts";

const ended = new AbortController();
const layer = badgeLayer(ended.signal);
const card = makeCard(ended.signal);

/** Everything that was pressed, with what it was pressed for. */
export const pressed: unknown[] = [];

const note =
  (name: string) =>
  async (...details: unknown[]) => {
    pressed.push([name, ...details]);
  };

const actions: CardActions = {
  toggleWish: note("toggleWish"),
  own: note("own"),
  unpick: note("unpick"),
  pickChoice: note("pickChoice"),
  pickPlace: (_, x, y) => note("pickPlace")(x, y),
  colorAt: (picture, x, y) =>
    `rgb(${[...(picture.getContext("2d")?.getImageData(x, y, 1, 1).data ?? [])].slice(0, 3)})`,
  picture: async () => {
    const canvas = document.createElement("canvas");
    canvas.width = 200;
    canvas.height = 100;
    const context = canvas.getContext("2d");
    if (!context) throw new Error("no canvas");
    context.fillStyle = "rgb(200,30,60)";
    context.fillRect(0, 0, 100, 100);
    context.fillStyle = "rgb(20,90,160)";
    context.fillRect(100, 0, 100, 100);
    return canvas;
  },
};

/** Hangs a badge on every picture of the page, each in its nearest element with the class "tile". */
export function badgeAll(model: Partial<BadgeModel> = {}, cardModel: Partial<CardModel> = {}): Badge[] {
  return [...document.querySelectorAll<HTMLElement>("img,.picture")].map((picture) => {
    const root = picture.closest(".tile") ?? picture;
    const badge = layer.hang(picture, root, () => {
      pressed.push("badge");
      card.open(badge.button, exampleCard.title);
      card.show(badge.button, { ...exampleCard, ...cardModel }, actions);
    });
    badge.show({ ...exampleBadge, ...model });
    return badge;
  });
}

export const stop = () => ended.abort();
