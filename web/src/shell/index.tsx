import { Answer } from "../answer";
import { Papers } from "../papers";
import { Place } from "../place";
import { Prices } from "../prices";
import { Questions } from "../questions";
import { Readings } from "../readings";
import { say } from "../words";
import { place, places } from "./route";

function Survey() {
  return (
    <div class="survey">
      <Place />
      <Questions />
      <Answer />
    </div>
  );
}

function Room() {
  switch (place.value) {
    case "readings": return <Readings />;
    case "papers": return <Papers />;
    case "prices": return <Prices />;
    default: return <Survey />;
  }
}

export function Shell() {
  return (
    <>
      <a class="skip" href="#work">{say("shell.skip")}</a>
      <header class="head">
        <nav aria-label={say("shell.places")}>
          {places.map((name) => (
            <a key={name} href={`#/${name}`} aria-current={place.value === name ? "page" : undefined}>
              {say(`shell.${name}`)}
            </a>
          ))}
        </nav>
      </header>
      <main id="work" tabIndex={-1}><Room /></main>
      <footer class="caution">{say("shell.caution")}</footer>
    </>
  );
}
