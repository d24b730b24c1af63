import { bombOf } from "../pixels/bomb.ts";
import { openServer, type PictureServer } from "../pixels/picture-server.ts";
import { pngOf } from "../pixels/png-of.ts";
import { HOSTILE_SCRIPT } from "./hostile-script.ts";

const cloth = (red: number, green: number, blue: number) =>
  pngOf(120, 156, (x, y) =>
    x > 30 && x < 90 && y > 24 && y < 132 ? [red, green, blue, 255] : [255, 255, 255, 255],
  );
const RED = cloth(178, 34, 52);

/** More pixels than any store needs, in some kilobytes. */
const BOMB = bombOf(10_000);

const DRAWING = `<svg xmlns="http://www.w3.org/2000/svg" width="200" height="260"><script>parent.pwned = true</script>
<rect width="200" height="260" fill="#b22234" onload="parent.pwned = true"/><image href="/outside.png" width="9" height="9"/></svg>`;

/** A store that means ill, on its own host, with pictures on another and something private on a third. */
export interface HostileStore {
  readonly shop: PictureServer;
  readonly cdn: PictureServer;
  readonly home: PictureServer;
  readonly url: string;
  close(): Promise<void>;
}

/** Titles of its products by what is wrong with each; `good` are as they should be. */
export const TITLES = {
  good: ["Camp shirt", "Rain coat", "Wool scarf"],
  markup: "<img src=x onerror=pwned=true> skirt",
  prototype: "__proto__",
  long: "Long ".repeat(200_000),
  script: "Script link trousers",
  data: "Data link trousers",
  drawing: "Drawn cardigan",
  bomb: "Folded cardigan",
  laterBomb: "Unfolding cardigan",
  redirect: "Wandering cardigan",
  noPicture: "Talking cardigan",
  endless: "Endless cardigan",
} as const;

const escaped = (text: string) => text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/"/g, "&quot;");

/** A form's fields stand in place of its properties, in every world. */
const NAMES = ["id", "title", "name", "lang", "dir", "style", "children", "hidden", "slot", "className"]
  .map((name) => `<input type="hidden" name="${name}">`)
  .join("");

function page(cdn: string): string {
  const tile = (title: string, picture: string, link = `/p/${encodeURIComponent(title.slice(0, 20))}`) =>
    `<li><form>${NAMES}<a href="${escaped(link)}"><img src="${picture}" width="160" height="208"></a><h3>${escaped(title)}</h3><span>€49.00</span></form></li>`;
  const data = [
    `{"@type":"ItemList","itemListElement":[${Array.from({ length: 100_000 }, (_, n) => `{"@type":"ListItem","position":${n},"url":"/p/${n}"}`).join()}]}`,
    `${'{"@graph":['.repeat(5_000)}1${"]}".repeat(5_000)}`,
    '{"@type":"Product","__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}},"name":"Camp shirt","color":"__proto__"}',
  ];
  return `<!doctype html><html lang="en"><meta charset="utf-8"><title>Store</title><script>${HOSTILE_SCRIPT}</script>
<style>ul{display:flex;flex-wrap:wrap;gap:12px;padding:0;list-style:none}li{position:relative;width:160px}h3{height:40px;overflow:hidden}</style>
${data.map((text) => `<script type="application/ld+json">${text}</script>`).join("")}
<ul>${[
    ...TITLES.good.map((title, n) => tile(title, n ? `${cdn}/red.png?${n}` : "/red.png")),
    tile(TITLES.markup, "/red.png?markup"),
    tile(TITLES.prototype, "/red.png?prototype", "/__proto__"),
    tile(TITLES.long, "/red.png?long"),
    tile(TITLES.script, "/red.png?script", "javascript:pwned=true"),
    tile(TITLES.data, "/red.png?data", "data:text/html,<script>pwned=true</script>"),
    tile(TITLES.drawing, `${cdn}/drawing.svg`),
    tile(TITLES.bomb, "/bomb.png"),
    tile(TITLES.laterBomb, `${cdn}/later-bomb.png`),
    tile(TITLES.redirect, `${cdn}/wandering.png`),
    tile(TITLES.noPicture, `${cdn}/talking.png`),
    tile(TITLES.endless, `${cdn}/endless.png`),
  ].join("")}</ul><p>Free shipping over €75</p>
<script>let floods = 0; const flood = setInterval(() => {
  if (++floods > 20) return clearInterval(flood);
  const many = document.createDocumentFragment();
  for (let n = 0; n < 1000; n++) many.appendChild(document.createElement("i"));
  document.lastChild.lastChild.appendChild(many);
}, 50);</script>`;
}

export async function openHostileStore(): Promise<HostileStore> {
  const home = await openServer((_, response) => response.setHeader("content-type", "image/png").end(RED));
  // What a page shows as a picture may be something else for whoever asks again.
  const again = () => cdn.seen.at(-1)?.headers["sec-fetch-dest"] !== "image";
  const cdn: PictureServer = await openServer((path, response) => {
    const name = path.slice(1).split(/[.?]/)[0];
    if (name === "wandering") {
      response.writeHead(302, { location: `http://127.0.0.1:${home.port}/router` }).end();
    } else if (name === "drawing") {
      response.setHeader("content-type", "image/svg+xml").end(DRAWING);
    } else if (name === "talking" && again()) {
      response.setHeader("content-type", "text/html").end("<!doctype html><title>Private</title>");
    } else if (name === "endless" && again()) {
      response.setHeader("content-type", "image/png").write(RED);
      const more = () => {
        while (!response.destroyed && response.write(Buffer.alloc(1 << 20)));
      };
      response.on("drain", more);
      more();
    } else {
      response.setHeader("content-type", "image/png").end(name === "later-bomb" && again() ? BOMB : RED);
    }
  });
  const shop = await openServer((path, response) => {
    if (path === "/")
      response.setHeader("content-type", "text/html").end(page(`http://cdn.localhost:${cdn.port}`));
    else response.setHeader("content-type", "image/png").end(path === "/bomb.png" ? BOMB : RED);
  });
  return {
    shop,
    cdn,
    home,
    url: `http://shop.localhost:${shop.port}/`,
    close: async () => {
      await Promise.all([shop.close(), cdn.close(), home.close()]);
    },
  };
}
