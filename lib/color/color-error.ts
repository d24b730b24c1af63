/** A value that is no colour we can work with. The message names the value and says what to do. */
export class ColorError extends Error {
  override readonly name = "ColorError";
}
