/** A colour in OKLab × 100 and how much of the cloth it is. */
interface Weighed {
  readonly l: number;
  readonly a: number;
  readonly b: number;
  readonly mass: number;
}

/** Where on the way from one colour to the other a blend lies, and how far off it (OKLab × 100). */
const BLEND_END = 0.15;
const BLEND_OFF = 6;

/** Whether a colour lies between two others that hold more: the blend along their edges. */
export function isBlend(color: Weighed, all: readonly Weighed[]): boolean {
  const more = all.filter(({ mass }) => mass > color.mass);
  return more.some((p) => more.some((q) => liesBetween(color, p, q)));
}

function liesBetween(color: Weighed, p: Weighed, q: Weighed): boolean {
  const l = q.l - p.l;
  const a = q.a - p.a;
  const b = q.b - p.b;
  const length = l * l + a * a + b * b || 1;
  const along = ((color.l - p.l) * l + (color.a - p.a) * a + (color.b - p.b) * b) / length;
  if (along < BLEND_END || along > 1 - BLEND_END) return false;
  const off = Math.hypot(p.l + along * l - color.l, p.a + along * a - color.a, p.b + along * b - color.b);
  return off < BLEND_OFF;
}
