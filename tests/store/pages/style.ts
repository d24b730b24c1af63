/** The shop's own clothes: warm paper, a serif for titles, wide margins. */
export const STYLE = `
*{box-sizing:border-box}
body{margin:0;background:#fffdfa;color:#29231f;font:15px/1.5 "Gill Sans","Gill Sans MT",Optima,Candara,sans-serif}
a{color:inherit;text-decoration:none}
a:hover{text-decoration:underline;text-underline-offset:3px}
h1,h2,h3,.logo{font-family:"Iowan Old Style",Palatino,"Palatino Linotype","Book Antiqua",Georgia,serif;font-weight:400}
.hidden,.skip:not(:focus){position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
.notice{margin:0;padding:6px;text-align:center;background:#34433d;color:#f6f1e6;font-size:13px;letter-spacing:.03em}
.top{display:grid;grid-template-columns:1fr auto 1fr;align-items:center;padding:18px 40px 0;border-bottom:1px solid #e4dccf}
.top .find{grid-row:1;grid-column:1}
.logo{grid-row:1;grid-column:2;display:flex;gap:12px;align-items:center;font-size:26px}
.logo:hover{text-decoration:none}
.logo i{color:#a0643c}
.logo small{display:block;font:11px/1.2 "Gill Sans",Optima,Candara,sans-serif;letter-spacing:.24em;text-transform:uppercase;color:#7b7067}
.mark{color:#a0643c}
.find label{display:inline-flex;align-items:center;gap:8px;border-bottom:1px solid #bdb2a4}
.find input{border:0;background:none;font:inherit;width:150px;padding:4px}
.tools{grid-row:1;grid-column:3;justify-self:end;display:flex;gap:20px}
.tools a{position:relative}
.tools b{position:absolute;right:-9px;top:-6px;min-width:17px;border-radius:9px;background:#a0643c;color:#fff;font-size:11px;text-align:center}
.top nav{grid-column:1/-1;display:flex;justify-content:center;gap:34px;padding:18px 0 14px;font-size:15px}
main{max-width:1360px;margin:0 auto;padding:24px 40px 80px}
.crumbs{font-size:13px;color:#7b7067;margin:0 0 18px}
.heading{display:flex;align-items:baseline;justify-content:space-between;gap:20px;margin-bottom:22px}
.heading h1{font-size:36px;margin:0}
.heading p{margin:0;color:#6b6159}
.shelf{display:grid;grid-template-columns:190px 1fr;gap:36px}
.filters h2{font-size:17px;margin:0 0 6px}
.filters fieldset{border:0;border-top:1px solid #e4dccf;margin:0 0 14px;padding:12px 0 0}
.filters label{display:block;padding:3px 0;color:#4d443d}
.tiles{list-style:none;margin:0;padding:0;display:grid;grid-template-columns:repeat(4,1fr);gap:34px 20px}
.tile{position:relative}
.tile .frame{display:block;aspect-ratio:3/4;background:#f3efe8;overflow:hidden}
.tile img{display:block;width:100%;height:100%;object-fit:cover}
.tile h3{font:inherit;font-size:15px;margin:10px 0 2px}
.tile .cost{margin:0;font-size:14px}
.cost del{color:#8b8178;margin-right:8px}
.cost ins{text-decoration:none;color:#a8322d}
.flag{position:absolute;left:0;top:12px;background:#fffdfa;padding:2px 10px;font-size:12px;letter-spacing:.04em}
.heart{position:absolute;right:10px;top:10px;width:34px;height:34px;border:0;border-radius:50%;background:#fffdfacc;cursor:pointer}
.shades{display:flex;gap:5px;margin:6px 0 0;padding:0;list-style:none}
.shades li{width:13px;height:13px;border-radius:50%;border:1px solid #0002}
.pages{text-align:center;margin-top:40px;color:#6b6159}
.product{display:grid;grid-template-columns:84px minmax(0,1.15fr) minmax(0,1fr);gap:18px}
.product .thumbs{display:flex;flex-direction:column;gap:10px}
.product .thumbs button{padding:0;border:1px solid transparent;background:#f3efe8;cursor:pointer}
.product .thumbs button[aria-current=true]{border-color:#29231f}
.product .thumbs img{display:block;width:100%}
.product .stage{background:#f3efe8;aspect-ratio:3/4}
.product .stage img{display:block;width:100%;height:100%;object-fit:cover}
.product .words{padding-left:30px}
.words h1{font-size:34px;line-height:1.15;margin:0 0 8px}
.words .cost{font-size:20px;margin:0 0 18px}
.swatches{display:flex;gap:12px;margin:8px 0 22px}
.swatches a{width:34px;height:34px;border-radius:50%;border:1px solid #0003}
.swatches a[aria-current=true]{outline:1px solid #29231f;outline-offset:4px}
.sizes{display:flex;gap:8px;margin:8px 0 22px;padding:0;border:0}
.sizes label{border:1px solid #bdb2a4;padding:7px 14px;cursor:pointer}
.sizes input{position:absolute;opacity:0}
.sizes label:has(:checked){border-color:#29231f;background:#29231f;color:#fff}
.buy{display:block;width:100%;padding:15px;border:0;background:#34433d;color:#fff;font:inherit;font-size:16px;cursor:pointer}
.words details{border-top:1px solid #e4dccf;padding:12px 0}
.words details:first-of-type{margin-top:26px}
.words summary{cursor:pointer}
.related{margin-top:64px}
.related h2{font-size:26px}
.stories{display:grid;grid-template-columns:repeat(3,1fr);gap:40px 28px}
.story .plate{display:block;width:100%;aspect-ratio:4/3}
.story h2{font-size:22px;margin:14px 0 6px;line-height:1.25}
.story p{margin:0;color:#5c534b}
.story .date{font-size:13px;color:#8b8178}
.prose{max-width:640px;margin:0 auto;font-size:17px}
footer{display:grid;grid-template-columns:repeat(3,1fr) 1.4fr;gap:20px 40px;padding:40px 60px;background:#f1ebe0;color:#4d443d;font-size:14px}
footer h2{font-size:17px;margin:0 0 8px}
footer div a{display:block;padding:2px 0}
footer input,footer button{font:inherit;padding:7px 10px;border:1px solid #bdb2a4;background:#fffdfa}
footer .small{grid-column:1/-1;margin:12px 0 0;font-size:12px;color:#7b7067}
@media (max-width:1000px){.tiles{grid-template-columns:repeat(3,1fr)}.shelf{grid-template-columns:1fr}.filters{display:none}}
@media (max-width:640px){.top{padding:14px 16px 0;grid-template-columns:1fr auto}.logo{grid-column:1;font-size:19px}.tools{grid-column:2}.find{display:none}.top nav{overflow-x:auto;justify-content:start;gap:20px;white-space:nowrap}main{padding:16px}.tiles{grid-template-columns:repeat(2,1fr);gap:22px 12px}.product{grid-template-columns:1fr}.product .thumbs{order:2;flex-direction:row}.product .thumbs button{width:64px}.product .words{order:3;padding:0}.stories{grid-template-columns:1fr}footer{grid-template-columns:1fr 1fr;padding:24px 16px}.heading h1{font-size:28px}}
`;
