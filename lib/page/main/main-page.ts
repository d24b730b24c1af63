import type { Cluster, Clustered } from "../clusters.ts";
import type { OwnBlock } from "./own-block.ts";

/** What a page shows besides the text that may name its product. */
export interface MainPage extends Clustered {
  /** Buttons, links and forms that may buy. */
  readonly buttons: readonly Element[];
  /** The block that the page is about, where its place tells. */
  readonly own: OwnBlock | null;
  /** Tiles, which are no part of the product that the page is about. */
  readonly beside: readonly Cluster[];
}
