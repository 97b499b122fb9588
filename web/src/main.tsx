import { render } from "preact";
import { openJob } from "./bench";
import { Shell } from "./shell";
import { followHash } from "./shell/route";
import "./style/tokens.css";
import "./style/page.css";

followHash();
render(<Shell />, document.getElementById("page")!);
void openJob("demo");
