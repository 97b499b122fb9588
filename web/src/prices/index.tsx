import { say } from "../words";

export function Prices() {
  return <section aria-labelledby="prices-title"><h1 id="prices-title">{say("prices.title")}</h1></section>;
}
