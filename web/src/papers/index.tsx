import { say } from "../words";

export function Papers() {
  return <section aria-labelledby="papers-title"><h1 id="papers-title">{say("papers.title")}</h1></section>;
}
