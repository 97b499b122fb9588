import { useSignal } from "@preact/signals";
import { author, tryServer } from "../bench";
import { NotThere, server } from "../keep/server";
import { say } from "../words";
import { goTo } from "./route";
import "./words";

export function Pair() {
  const code = useSignal("");
  const outcome = useSignal("");
  const join = async (event: Event) => {
    event.preventDefault();
    try {
      await server.pair(code.value.trim(), author.value);
      outcome.value = say("shell.pair_done");
      await tryServer();
      if (location.pathname.endsWith("/pair")) location.assign("./");
      else goTo("survey");
    } catch (error) {
      outcome.value = error instanceof NotThere
        ? say("shell.pair_away") : say("shell.pair_wrong", { says: (error as Error).message });
    }
  };
  return (
    <section class="sheet" aria-labelledby="pair-title">
      <h1 id="pair-title">{say("shell.pair_title")}</h1>
      <p>{say("shell.pair_why")}</p>
      <form onSubmit={join} class="form">
        <label>{say("shell.pair_code")}
          <input type="text" autocapitalize="characters" autocomplete="off" spellcheck={false} required
            value={code.value} onInput={(e) => { code.value = e.currentTarget.value; }} />
        </label>
        <label>{say("shell.pair_name")}
          <input type="text" autocomplete="name" value={author.value}
            onInput={(e) => { author.value = e.currentTarget.value; }} />
        </label>
        <p class="actions"><button class="main">{say("shell.pair_go")}</button></p>
        <p role="status">{outcome.value}</p>
      </form>
    </section>
  );
}
