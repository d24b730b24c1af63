import type { CardActions, CardModel } from "./card-model.ts";
import { makeCloth } from "./cloth.ts";
import { make, makeButton, onPerson } from "./make.ts";
import { unsearchableName } from "./unsearchable.ts";

/** Pixels the cross moves per press of an arrow key, and with Shift. */
const STEP = 2;
const STRIDE = 16;

const ARROWS: Readonly<Record<string, readonly [x: number, y: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** Where a person says the right colour: on the picture, by pointer or arrow keys, or among named colours. */
export function makePicker(
  { choices, corrected }: CardModel,
  actions: CardActions,
  decide: (act: () => Promise<void>) => void,
): HTMLElement[] {
  const onPicture = make("div", "pointing", make("p", "soft", "Opening the picture."));
  actions.picture().then(
    (canvas) => onPicture.replaceChildren(...pointingOn(canvas, actions, decide)),
    () =>
      onPicture.replaceChildren(
        make("p", "soft", "This picture cannot be pointed at. Choose a colour by name."),
      ),
  );
  const named = choices.map((choice, index) => {
    const button = makeButton("choice", "", () => decide(() => actions.pickChoice(index)));
    button.append(makeCloth([{ ...choice, share: 1 }]), choice.name);
    return button;
  });
  const again = makeButton("button", "", () => decide(actions.unpick));
  again.append(unsearchableName("Go by the picture again"));
  return [onPicture, make("div", "choices", ...named), ...(corrected ? [again] : [])];
}

function pointingOn(
  canvas: HTMLCanvasElement,
  actions: CardActions,
  decide: (act: () => Promise<void>) => void,
): HTMLElement[] {
  const cross = make("span", "cross");
  const found = make("span", "found");
  let x = canvas.width >> 1;
  let y = canvas.height >> 1;
  const move = (toX: number, toY: number) => {
    x = Math.max(0, Math.min(canvas.width - 1, Math.round(toX)));
    y = Math.max(0, Math.min(canvas.height - 1, Math.round(toY)));
    cross.style.left = `${(100 * (x + 0.5)) / canvas.width}%`;
    cross.style.top = `${(100 * (y + 0.5)) / canvas.height}%`;
    found.replaceChildren(makeCloth([{ css: actions.colorAt(canvas, x, y), share: 1, name: "" }]));
  };
  const pad = make("div", "pad", canvas, cross);
  pad.tabIndex = 0;
  pad.role = "application";
  pad.ariaLabel = "The picture. Move the cross onto the cloth with the arrow keys, then press Enter.";
  onPerson(pad, "click", (event) => {
    const box = canvas.getBoundingClientRect();
    move(
      ((event.clientX - box.left) * canvas.width) / box.width,
      ((event.clientY - box.top) * canvas.height) / box.height,
    );
  });
  onPerson(pad, "keydown", (event) => {
    const arrow = ARROWS[event.key];
    if (event.key === "Enter") decide(() => actions.pickPlace(canvas, x, y));
    if (!arrow) return;
    event.preventDefault();
    const step = event.shiftKey ? STRIDE : STEP;
    move(x + arrow[0] * step, y + arrow[1] * step);
  });
  move(x, y);
  const take = makeButton("button", "This is the colour", () =>
    decide(() => actions.pickPlace(canvas, x, y)),
  );
  return [
    make("p", "soft", "Point at the cloth, or choose a colour below."),
    pad,
    make("div", "row", found, take),
  ];
}
