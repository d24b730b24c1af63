import { escaped } from "./html.ts";
import { layout } from "./layout.ts";

/** Articles of the shop's journal: nothing for sale in them. The colours are those of the plate above each. */
const STORIES = [
  [
    "how-wool-takes-a-dye",
    "How wool takes a dye",
    "3 November",
    "A morning at the vats with the people who mix our reds and blues.",
    "#7c2f38",
    "#d9a05b",
    "#efe1c8",
  ],
  [
    "walking-the-sea-wall",
    "Walking the sea wall",
    "27 October",
    "Five miles of wind, two flasks of tea and a very patient dog.",
    "#31566b",
    "#9fb9bf",
    "#e8e4d6",
  ],
  [
    "mending-a-moth-hole",
    "Mending a moth hole, and being proud of it",
    "19 October",
    "Eda shows a darn that is meant to be seen.",
    "#5f6b3b",
    "#c9b458",
    "#f0ead2",
  ],
  [
    "the-button-drawer",
    "The button drawer",
    "8 October",
    "Four generations of odd buttons and the dresses they fell off.",
    "#8d5a7b",
    "#d7a7a0",
    "#f3e3dc",
  ],
  [
    "rain-in-saltmarrow",
    "Rain in Saltmarrow",
    "30 September",
    "What the town looks like when everyone has gone home.",
    "#44505c",
    "#8d9aa3",
    "#d3d8d9",
  ],
  [
    "a-garden-in-november",
    "A garden in November",
    "21 September",
    "Seed heads, rust and the last of the dahlias.",
    "#94502d",
    "#d08a4a",
    "#ecd9b8",
  ],
] as const;

/** A small landscape of three hills and a sun: the plate of a story. */
const plate = (dark: string, middle: string, pale: string, turn: number): string =>
  `<svg class="plate" viewBox="0 0 400 300" preserveAspectRatio="xMidYMid slice" role="img" aria-label="A drawing of hills"><rect width="400" height="300" fill="${pale}"/><circle cx="${90 + turn * 37}" cy="${70 + (turn % 3) * 14}" r="28" fill="${middle}" opacity=".7"/><path d="M0 190Q90 ${110 + turn * 8} 190 180T400 150V300H0z" fill="${middle}"/><path d="M0 240Q120 ${170 + turn * 6} 240 235T400 215V300H0z" fill="${dark}"/></svg>`;

const drawn = (dark: string, middle: string, pale: string, turn: number): string =>
  `data:image/svg+xml,${encodeURIComponent(plate(dark, middle, pale, turn).replace("<svg ", '<svg xmlns="http://www.w3.org/2000/svg" '))}`;

/** A page with picture cards and not one product. */
export function journalPage(): string {
  const cards = STORIES.map(
    ([slug, title, date, words, dark, middle, pale], i) =>
      `<article class="story"><a href="/journal/${slug}"><img class="plate" src="${drawn(dark, middle, pale, i)}" alt=""></a><h2><a href="/journal/${slug}">${escaped(title)}</a></h2><p>${escaped(words)}</p><p class="date">${date} · 4 minutes</p></article>`,
  );
  return layout(
    "Journal",
    `<div class="heading"><h1>Journal</h1><p>Notes from the workroom and the harbour</p></div><div class="stories">${cards.join("\n")}</div>`,
  );
}

/** One story, or null where there is none of that name. */
export function storyPage(slug: string): string | null {
  const story = STORIES.find(([name]) => name === slug);
  if (!story) return null;
  const [, title, date, words] = story;
  return layout(
    title,
    `<article class="prose"><h1>${escaped(title)}</h1><p>${date}</p><p>${escaped(words)}</p><p>The rest of it is pinned to the door of the workroom; come in and read it with a cup of tea.</p></article>`,
  );
}
