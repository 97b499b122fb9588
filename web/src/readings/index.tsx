import { say } from "../words";

export function Readings() {
  return <section aria-labelledby="readings-title"><h1 id="readings-title">{say("readings.title")}</h1></section>;
}
