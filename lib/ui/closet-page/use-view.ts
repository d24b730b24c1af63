import { useEffect, useState } from "preact/hooks";

export const VIEWS = ["closet", "wishlist"] as const;
export type View = (typeof VIEWS)[number];

/** Which view the address names; what is no view (a place on the page) stays with the closet. */
export function useView(): View {
  const [view, setView] = useState(viewOf);
  useEffect(() => {
    const look = () => setView(viewOf);
    addEventListener("hashchange", look);
    return () => removeEventListener("hashchange", look);
  }, []);
  return view;
}

function viewOf(): View {
  return location.hash === "#wishlist" ? "wishlist" : "closet";
}
