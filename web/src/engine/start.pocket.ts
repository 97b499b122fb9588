// In a page that is one file the worker is inside it as well.
import InlineWorker from "./worker.ts?worker&inline";

export default function startWorker(): Worker {
  return new InlineWorker();
}
