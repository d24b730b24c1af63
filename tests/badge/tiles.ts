const DOT =
  "data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg' width='200' height='260'%3E%3C/svg%3E";
/** A picture of 200 × 260 px, otherwise empty. */
export const picture = (style = "") => `<img alt="" src="${DOT}" style="width:200px;height:260px;${style}">`;

/** The ways stores build a tile; each must bear a badge without moving by a hair. */
export const TILES = {
  positioned: `<div class="tile" style="position:relative;width:200px">${picture("display:block")}<p>Name</p></div>`,
  "picture box": `<div class="tile" style="width:200px"><div style="position:relative;overflow:hidden;border:3px solid">${picture("position:absolute;inset:0")}<div style="padding-top:130%"></div></div><p>Name</p></div>`,
  link: `<a class="tile" href="#away" style="position:relative;display:block;width:200px">${picture()}<span>Name</span></a>`,
  "inline link": `<div class="tile" style="width:200px"><a href="#away" style="position:relative">${picture()}</a></div>`,
  "flex with gaps": `<div class="tile" style="position:relative;display:flex;flex-direction:column;gap:9px;width:200px">${picture()}<b>Name</b></div>`,
  "grid with gaps": `<div class="tile" style="position:relative;display:grid;gap:9px;width:200px">${picture()}<b>Name</b></div>`,
  "last child rule": `<style>.last>*+*{margin-top:40px}.last>:last-child{padding:20px}</style><div class="tile last" style="width:200px"><div style="position:relative">${picture()}</div><p>Name</p></div>`,
  static: `<div class="tile" style="width:200px">${picture()}<p>Name</p></div>`,
  "table cell": `<table class="tile"><tr><td>${picture()}</td></tr></table>`,
  button: `<div class="tile" style="position:relative;width:220px"><button style="position:relative">${picture()}</button></div>`,
  "right to left": `<div class="tile" dir="rtl" style="position:relative;width:200px">${picture()}<p>اسم</p></div>`,
  background: `<div class="tile" style="width:200px"><div class="picture" style="position:relative;height:260px;background:#777"></div></div>`,
  "scrolled box": `<div class="tile" style="position:relative;width:200px;height:300px;overflow:auto"><div style="height:120px"></div>${picture()}</div>`,
} as const;
