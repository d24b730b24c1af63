/** Sizes that a picture file gives of itself, in pixels. */
export interface SaidSize {
  readonly width: number;
  readonly height: number;
}

const PNG = "\u0089PNG";
const JPEG = "\u00ff\u00d8\u00ff";

/** JPEG markers that begin a frame and its size: C0 to CF but for tables, reserved and arithmetic ones (ITU-T T.81, table B.1). */
const isFrame = (marker: number): boolean =>
  marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;

/**
 * The size that a PNG, JPEG, GIF, WebP or AVIF file says it has, without decoding it: a few kilobytes may unfold to
 * gigabytes. Null for anything else, whatever it calls itself.
 */
export function sizeInFile(bytes: Uint8Array): SaidSize | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const says = (text: string, at = 0) =>
    Array.from(text).every((character, index) => bytes[at + index] === character.charCodeAt(0));
  try {
    if (says(PNG)) return { width: view.getUint32(16), height: view.getUint32(20) };
    if (says("GIF8")) return { width: view.getUint16(6, true), height: view.getUint16(8, true) };
    if (says(JPEG)) return sizeOfJpeg(view);
    if (says("RIFF") && says("WEBP", 8)) return sizeOfWebp(view);
    return says("ftyp", 4) ? sizeOfAvif(view) : null;
  } catch {
    // The file ends before its size.
    return null;
  }
}

function sizeOfJpeg(view: DataView): SaidSize {
  let at = 2;
  for (let marker = view.getUint8(3); !isFrame(marker); marker = view.getUint8(at + 1)) {
    // A marker may be led by any number of fill bytes.
    at += marker === 0xff ? 1 : 2 + view.getUint16(at + 2);
  }
  return { height: view.getUint16(at + 5), width: view.getUint16(at + 7) };
}

/** The three kinds of WebP (RFC 9649): extended, lossless and lossy, told by the last letter of the first chunk's name. */
function sizeOfWebp(view: DataView): SaidSize {
  const kind = String.fromCharCode(view.getUint8(15));
  if (kind === "X") {
    const [width, height] = [24, 27].map((at) => 1 + (view.getUint32(at - 1, true) >>> 8));
    return { width: width ?? 0, height: height ?? 0 };
  }
  if (kind === "L") {
    const bits = view.getUint32(21, true);
    return { width: 1 + (bits & 0x3fff), height: 1 + ((bits >>> 14) & 0x3fff) };
  }
  return { width: view.getUint16(26, true) & 0x3fff, height: view.getUint16(28, true) & 0x3fff };
}

/** The largest of the sizes in an AVIF's "ispe" boxes (ISO/IEC 23008-12, 6.5.3): a picture of tiles has one for each. */
function sizeOfAvif(view: DataView): SaidSize | null {
  let largest: SaidSize | null = null;
  for (let at = 0; at + 16 <= view.byteLength; at++) {
    if (view.getUint32(at) !== 0x69737065) continue;
    const size = { width: view.getUint32(at + 8), height: view.getUint32(at + 12) };
    if (!largest || size.width * size.height > largest.width * largest.height) largest = size;
  }
  return largest;
}
