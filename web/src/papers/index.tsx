import { say } from "../words";

export function Papers() {
  return <section aria-labelledby="papers-title"><h2 id="papers-title">{say("papers.title")}</h2></section>;
}
