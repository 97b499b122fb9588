import { say } from "../words";

export function Answer() {
  return <section aria-labelledby="answer-title"><h2 id="answer-title">{say("answer.title")}</h2></section>;
}
