import { say } from "../words";

export function Readings() {
  return <section aria-labelledby="readings-title"><h2 id="readings-title">{say("readings.title")}</h2></section>;
}
