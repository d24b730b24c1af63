import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { defineConfig } from "wxt";

/** Preact's one assignment of markup, behind a property that no component here uses; no script may write markup. */
const MARKUP = /\(\w+\.innerHTML=\w+\.__html\)/;

/** Takes that assignment out of the build. Stops the build where Preact no longer has it as it was. */
const withoutMarkup = {
  name: "without-markup",
  transform(code: string, id: string) {
    if (!id.includes("/preact/dist/preact.")) return null;
    if (!MARKUP.test(code)) throw new Error("Preact writes markup in another way than wxt.config.ts knows.");
    return { code: code.replace(MARKUP, "0"), map: null };
  },
};

/** The licences of all libraries whose code is shipped, which ask to go with it; the builder drops their comments. */
function shippedLicences(): string {
  const { dependencies } = JSON.parse(readFileSync("package.json", "utf8")) as {
    dependencies: Record<string, string>;
  };
  return Object.keys(dependencies)
    .map((name) => {
      const folder = join("node_modules", name);
      const file = readdirSync(folder).find((one) => /^licen[cs]e/i.test(one));
      if (file === undefined) throw new Error(`${name} has no licence file to ship.`);
      return `${name}\n\n${readFileSync(join(folder, file), "utf8").trim()}\n`;
    })
    .join("\n\n");
}

/** Node builds with WXT; auto-imports are off so that a file names what it uses. */
export default defineConfig({
  imports: false,
  manifestVersion: 3,
  outDir: ".output",
  publicDir: "assets",
  // Terser makes the page script 3 % smaller than the builder's own minifier.
  vite: () => ({
    plugins: [withoutMarkup],
    build: {
      minify: "terser",
      terserOptions: { ecma: 2020, compress: { passes: 3, unsafe_arrows: true, pure_getters: "strict" } },
    },
  }),
  hooks: {
    // WXT 0.21.4 rewrites code for its presets even with auto-imports off: a parameter named `storage` would bring
    // its whole storage module into the page script.
    "config:resolved": ({ config }) => {
      config.imports.presets = [];
    },
    "build:publicAssets": (_, files) => {
      files.push({ relativeDest: "licences.txt", contents: shippedLicences() });
    },
  },
  manifest: ({ browser }) => ({
    name: "Hueward",
    description:
      "Shop against your own palette: see on any store page what a colour matches, completes or repeats in your closet.",
    permissions: ["activeTab", "scripting", "storage", "unlimitedStorage"],
    optional_host_permissions: ["*://*/*"],
    ...(browser === "firefox"
      ? {
          browser_specific_settings: {
            gecko: {
              id: "hueward@hueward.invalid",
              strict_min_version: "142.0",
              data_collection_permissions: { required: ["none"] },
            },
            gecko_android: { strict_min_version: "142.0" },
          },
        }
      : { minimum_chrome_version: "148", message_serialization: "structured_clone" }),
  }),
});
