import { CATALOGUE } from "../catalogue.ts";
import type { Addresses } from "./html.ts";
import { layout } from "./layout.ts";
import { lotsOf, tile } from "./tile.ts";

/** Tiles that come at a time. */
const BATCH = 24;

/** Pictures are fetched when their tile nears the window; the next batch when the end does. */
const SCRIPT = `<script>
const list = document.querySelector(".tiles");
const end = document.querySelector(".pages");
const near = new IntersectionObserver((entries) => {
  for (const { isIntersecting, target } of entries) if (isIntersecting) {
    near.unobserve(target);
    target.src = target.dataset.src;
    target.removeAttribute("data-src");
    target.classList.remove("wait");
  }
}, { rootMargin: "300px" });
const watch = () => { for (const image of list.querySelectorAll("img.wait")) near.observe(image); };
let busy = false;
const more = new IntersectionObserver(async ([entry]) => {
  if (!entry.isIntersecting || busy) return;
  busy = true;
  const answer = await fetch("/endless/more?from=" + list.children.length + "&count=" + list.dataset.count);
  const text = await answer.text();
  list.insertAdjacentHTML("beforeend", text);
  watch();
  busy = false;
  more.unobserve(end);
  if (list.children.length < Number(list.dataset.count)) more.observe(end);
  else end.textContent = "That is everything for now.";
}, { rootMargin: "500px" });
watch();
more.observe(end);
</script>`;

/** The tiles from number `from` on, as the page's script asks for them. */
export const moreTiles = (addresses: Addresses, from: number, count: number): string =>
  lotsOf(CATALOGUE, count)
    .slice(from, from + BATCH)
    .map((lot) => tile(addresses, lot, true))
    .join("\n");

/** A listing with lazy pictures that grows up to `count` tiles as it is scrolled. */
export const endlessPage = (addresses: Addresses, count: number): string =>
  layout(
    "New this season",
    `<div class="heading"><h1>New this season</h1><p>Keep scrolling</p></div>
<ul class="tiles" data-count="${count}">
${moreTiles(addresses, 0, Math.min(count, BATCH))}
</ul><p class="pages">One moment</p>${SCRIPT}`,
  );
