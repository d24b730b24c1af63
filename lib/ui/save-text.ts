/** Long enough for a browser to begin the download, ms; the address of the text is freed afterwards. */
const KEPT_FOR_MS = 60_000;

/** Hands a text to the browser's downloads under a file name. */
export function saveText(fileName: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  const link = document.createElement("a");
  link.href = address;
  link.download = fileName;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), KEPT_FOR_MS);
}
