import { say } from "../words";

export function Questions() {
  return <section aria-labelledby="questions-title"><h2 id="questions-title">{say("questions.title")}</h2></section>;
}
