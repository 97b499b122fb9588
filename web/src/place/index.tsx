import { say } from "../words";

export function Place() {
  return <section aria-labelledby="place-title"><h2 id="place-title">{say("place.title")}</h2></section>;
}
