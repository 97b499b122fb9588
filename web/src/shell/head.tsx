import { canRedo, canUndo, redo, set, sync, title, undo, type Sync } from "../bench";
import { say, type WordKey } from "../words";
import { helpOpen } from "./keys";
import { place, places } from "./route";
import { theme, themes } from "./settings";

const syncWords: Record<Sync, WordKey> = {
  saved: "shell.saved", saving: "shell.saving", offline: "shell.offline",
  unkept: "shell.unkept", clash: "shell.two_versions",
};

function Title() {
  const write = (event: Event) => {
    const text = (event.currentTarget as HTMLInputElement).value;
    set("/title", text || undefined, say("shell.job_title"), "typing");
  };
  return (
    <input class="title" type="text" value={title.value} onInput={write} maxLength={200}
      aria-label={say("shell.job_title")} placeholder={say("shell.job_title_missing")} />
  );
}

export function Places() {
  return (
    <nav class="places" aria-label={say("shell.places")}>
      {places.map((name) => (
        <a key={name} href={`#/${name}`} aria-current={place.value === name ? "page" : undefined}>
          {say(`shell.${name}`)}
        </a>
      ))}
    </nav>
  );
}

function ThemeChoice() {
  const choose = (event: Event) => {
    const word = (event.currentTarget as HTMLSelectElement).value;
    theme.value = themes.find((name) => name === word) ?? "system";
  };
  return (
    <label class="theme">
      <span>{say("shell.theme")}</span>
      <select value={theme.value} onChange={choose}>
        {themes.map((name) => <option key={name} value={name}>{say(`shell.theme_${name}`)}</option>)}
      </select>
    </label>
  );
}

/** Small settings that are wanted seldom; at the foot of the page. */
export function Settings() {
  return (
    <p class="settings">
      <ThemeChoice />
      <button type="button" class="quiet" onClick={() => { helpOpen.value = true; }}>
        {say("shell.keys")}
      </button>
    </p>
  );
}

export function Head() {
  return (
    <header class="head">
      <div class="head-line">
        <Title />
        <span class={`sync sync-${sync.value}`} role="status" aria-label={say("shell.sync")}>
          {say(syncWords[sync.value])}
        </span>
        <span class="steps">
          <button type="button" class="quiet" disabled={!canUndo.value} onClick={() => void undo()}>
            {say("shell.undo")}
          </button>
          <button type="button" class="quiet" disabled={!canRedo.value} onClick={() => void redo()}>
            {say("shell.redo")}
          </button>
        </span>
      </div>
      <Places />
    </header>
  );
}
