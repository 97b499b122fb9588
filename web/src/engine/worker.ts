// A worker that holds one instance of the engine and does one thing at a time.

import { openModule, type Work } from "./module";
import type { Answered, Asked } from "./lane";

const scope = self as unknown as {
  onmessage: (event: MessageEvent<Asked>) => void;
  postMessage(message: Answered): void;
};

let work: Promise<Work> | undefined;

scope.onmessage = async ({ data }) => {
  if ("module" in data) {
    work = openModule(data.module);
    work.catch(() => {});  // told with the first call
    return;
  }
  try {
    if (!work) throw new Error("no module");
    const engine = await work;
    const begun = performance.now();
    const text = engine(data.verb, data.body);
    scope.postMessage({ id: data.id, text, took: performance.now() - begun });
  } catch (error) {
    scope.postMessage({ id: data.id, failed: String(error) });
  }
};
