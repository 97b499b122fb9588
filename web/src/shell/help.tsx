// What keys do, told in a view over the page.

import { say } from "../words";
import { Dialog } from "./dialog";
import { helpOpen } from "./keys";
import { places } from "./route";
import { singleKeys } from "./settings";
import "./words";

export function Keys() {
  const close = () => { helpOpen.value = false; };
  const flip = () => { singleKeys.value = singleKeys.value === "on" ? "off" : "on"; };
  return (
    <Dialog title={say("shell.keys_title")} close={say("shell.keys_close")} onClose={close}>
      <dl class="keys">
        <dt><kbd>Ctrl Z</kbd></dt><dd>{say("shell.key_undo")}</dd>
        <dt><kbd>Ctrl Shift Z</kbd></dt><dd>{say("shell.key_redo")}</dd>
        <dt><kbd>1</kbd> … <kbd>6</kbd></dt>
        <dd>{say("shell.key_places", {
          places: places.map((name) => say(`shell.${name}`)).join(", "),
        })}</dd>
        <dt><kbd>Tab</kbd></dt><dd>{say("shell.key_tab")}</dd>
        <dt><kbd>?</kbd></dt><dd>{say("shell.key_help")}</dd>
      </dl>
      <label class="tick">
        <input type="checkbox" checked={singleKeys.value === "on"} onChange={flip} />
        {say("shell.keys_single")}
      </label>
    </Dialog>
  );
}
