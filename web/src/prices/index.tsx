import { say } from "../words";

export function Prices() {
  return <section aria-labelledby="prices-title"><h2 id="prices-title">{say("prices.title")}</h2></section>;
}
