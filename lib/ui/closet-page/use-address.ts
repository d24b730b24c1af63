import { useEffect, useState } from "preact/hooks";

/** The address under which the page can show a file, while it is shown; "" before. */
export function useAddress(file: File): string {
  const [address, setAddress] = useState("");
  useEffect(() => {
    const made = URL.createObjectURL(file);
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [file]);
  return address;
}
