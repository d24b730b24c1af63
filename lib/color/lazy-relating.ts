import type { ColorPoint } from "./color-point.ts";
import { deltaE2000 } from "./difference.ts";
import { type Relating, wheelAngleOf } from "./relate.ts";
import { othersOf, relationIn, relationsIn } from "./relation-code.ts";
import type { Relation } from "./relation-name.ts";
import { pairError } from "./uncertainty.ts";

/**
 * What `relate` gives for two colours whose names `relateToAll` has found already: the figures behind the names are worked out when they are
 * read, for of many thousand pairs hardly any is asked for them.
 */
export class LazyRelating implements Relating {
  readonly relation: Relation;
  readonly alternatives: readonly Relation[];
  private readonly a: ColorPoint;
  private readonly b: ColorPoint;
  private readonly confidence: number;
  private difference: number | null = null;

  /** @param names the code of a list of names (`relation-code.ts`). */
  constructor(names: number, a: ColorPoint, b: ColorPoint, confidence: number) {
    this.relation = relationIn(names);
    this.alternatives = relationsIn(othersOf(names));
    this.a = a;
    this.b = b;
    this.confidence = confidence;
  }

  get wheelAngle(): number | null {
    return wheelAngleOf(this.a, this.b);
  }

  get deltaE2000(): number {
    this.difference ??= deltaE2000(this.a, this.b);
    return this.difference;
  }

  get uncertainty(): number | null {
    return this.wheelAngle === null ? null : pairError(this.a, this.b, this.confidence);
  }
}
