import { render } from "preact";
import * as bench from "./bench";
import { begin, whenAnswered } from "./bench/begin";
import { Shell } from "./shell";
import { followBuild, keepPage } from "./offline";
import { keepBook } from "./prices/book";
import { fetchParts } from "./shell/later";
import { followKeys } from "./shell/keys";
import { followHash } from "./shell/route";
import { followTheme } from "./shell/settings";
import "./style/tokens.css";
import "./style/page.css";
import "./style/shell.css";
import "./style/print.css";

followBuild();
followTheme();
followHash();
followKeys();
render(<Shell />, document.getElementById("page")!);
void begin().then(keepBook).then(keepPage);
whenAnswered(() => void fetchParts());

// For the console and the browser tests: what the rooms have, no more.
Object.assign(globalThis, { toft: bench });
