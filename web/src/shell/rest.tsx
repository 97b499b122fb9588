// What the page says of the rest of the engine while only its first module is here.

import { faults, NOT_WHOLE, rest, tryRest } from "../bench";
import { say, type WordKey } from "../words";

/** Words for where something of the whole module is waited for; `usual` once it is here. */
export function awaited(usual: WordKey): string {
  if (rest.value === "coming") return say("shell.rest_coming");
  return say(rest.value === "away" ? "shell.rest_lacks" : usual);
}

export function RestNotice() {
  if (rest.value !== "away") return null;
  const needed = faults.value.some(({ code }) => code === NOT_WHOLE);
  return (
    <p class="notice" role={needed ? "alert" : "status"}>
      {say(needed ? "shell.rest_needed" : "shell.rest_away")}{" "}
      <button type="button" onClick={tryRest}>{say("shell.rest_try")}</button>
    </p>
  );
}
