import { ask, behind, faults, first } from "../bench";
import { awaited } from "../shell/rest";
import { say } from "../words";
import "../fact/fact.css";
import { later } from "../shell/later";
import "./questions.css";
import { current, session } from "./state";

const Card = later(async () => (await import("./Card")).Card);
const Guide = later(async () => (await import("./Guide")).Guide);
const Lists = later(async () => (await import("./Lists")).Lists, true);

/** Nothing is left to ask: what that means, said without promising more. */
function Nothing() {
  if (!ask.value || behind.value) return <p class="small" role="status">{awaited("questions.thinking")}</p>;
  const open = session.value.aside.length;
  return <p>{say(open > 0 ? "questions.rest_open" : "questions.rest", { n: open })}</p>;
}

/** One question at a time, the one that matters most first. */
export function Questions() {
  const asked = current.value;
  const lacking = faults.value.length > 0 && !session.value.back;
  return (
    <section class="questions" aria-labelledby="questions-title">
      <h2 id="questions-title">{say(lacking ? "questions.title_first" : "questions.title")}</h2>
      {lacking && <Guide />}
      {!lacking && asked && <Card asked={asked} />}
      {!lacking && !asked && first.value && <Nothing />}
      <Lists />
    </section>
  );
}
