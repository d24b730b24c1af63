/** Characters of a piece's name that a sentence has room for. Our choice, from the width of a badge. */
const NAME_MOST = 28;

/** A piece's name inside a sentence: "your navy blazer"; a long one is cut between words. */
export function yourName(name: string): string {
  const cut = name.length <= NAME_MOST ? name : `${name.slice(0, NAME_MOST).replace(/\s+\S*$/, "")}…`;
  const capitalised = /^\p{Lu}\p{Ll}/u.test(cut);
  return `your ${capitalised ? cut.charAt(0).toLowerCase() + cut.slice(1) : cut}`;
}
