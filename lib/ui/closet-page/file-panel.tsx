import { useState } from "preact/hooks";
import { Button } from "../button.tsx";
import type { Actions } from "./use-actions.ts";
import { sentenceOf } from "./use-closet.ts";

/** Takes the closet out as a file and reads one in; says which entries could not be used. */
export function FilePanel({ actions }: { actions: Pick<Actions, "exportFile" | "importFile"> }) {
  const [trouble, setTrouble] = useState<readonly string[]>([]);
  const read = async (file: File) => {
    try {
      setTrouble([]);
      setTrouble(await actions.importFile(await file.text()));
    } catch (error) {
      setTrouble([sentenceOf(error)]);
    }
  };
  return (
    <section class="file-panel" aria-labelledby="file-panel-title">
      <h2 id="file-panel-title">Your closet file</h2>
      <p>
        The closet lives in this browser alone. Take a copy out now and then; read it in on another machine.
        Reading a file adds to what hangs here.
      </p>
      <div class="file-actions">
        <Button onClick={() => void actions.exportFile()}>Export the closet</Button>
        <label class="labelled">
          Import a closet file
          <input
            class="field"
            type="file"
            accept=".json,application/json"
            onChange={(event) => {
              const file = event.currentTarget.files?.[0];
              event.currentTarget.value = "";
              if (file) void read(file);
            }}
          />
        </label>
      </div>
      <div role="alert">
        {trouble.length > 0 && (
          <ul class="alert">
            {trouble.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        )}
      </div>
    </section>
  );
}
