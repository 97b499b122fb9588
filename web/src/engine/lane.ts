// One worker and the calls that wait for it, in order. A lane may be cleared: what runs in it is
// ended with its worker, and a new one starts with the next call.

import { NotLoaded, Overtaken } from "./faults";

export type Asked = { module: WebAssembly.Module } | { id: number; verb: string; body: string };
/** `took`: milliseconds that the engine was at it. */
export type Answered =
  | { id: number; text: string; took: number }
  | { id: number; failed: string };

export interface WorkerLike {
  postMessage(message: Asked): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<Answered>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

interface Call {
  id: number;
  verb: string;
  body: string;
  done: (text: string) => void;
  failed: (error: Error) => void;
}

export class Lane {
  #worker: WorkerLike | undefined;
  #spare: WorkerLike | undefined;
  #running: Call | undefined;
  #waiting: Call[] = [];
  #retired = false;
  #spent = false;
  #next = 1;

  constructor(
    readonly start: () => WorkerLike,
    readonly module: () => Promise<WebAssembly.Module>,
  ) {}

  /** Starts the worker, so that the first call finds it ready. */
  async warm(): Promise<void> {
    await this.#ready();
  }

  call(verb: string, body: string): Promise<string> {
    return new Promise((done, failed) => {
      this.#waiting.push({ id: this.#next++, verb, body, done, failed });
      this.#go();
    });
  }

  /** Ends what runs and forgets what waits. */
  clear(): void {
    const idle = [...(this.#running ? [this.#running] : []), ...this.#waiting];
    if (this.#running) this.#end();
    this.#waiting = [];
    for (const call of idle) call.failed(new Overtaken());
  }

  /** Ends the worker once nothing runs or waits in it. */
  retire(): void {
    this.#retired = true;
    if (!this.#running) this.#end();
  }

  /** Ends the worker after what runs in it; the next call gets a new one. */
  renew(): void {
    if (this.#running) this.#spent = true;
    else this.#end();
  }

  #end(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
    this.#running = undefined;
    this.#spent = false;
    if (this.#retired) this.#endSpare();
  }

  #endSpare(): void {
    this.#spare?.terminate();
    this.#spare = undefined;
  }

  /** The worker starts while its module is still on the way. */
  async #ready(): Promise<WorkerLike> {
    if (!this.#worker) this.#spare ??= this.start();
    const module = await this.module().catch((error) => {
      this.#endSpare();
      throw new NotLoaded(String(error));
    });
    if (this.#retired && !this.#running) throw new Overtaken();  // let go meanwhile
    if (!this.#worker) {
      const worker = this.#spare ?? this.start();
      this.#spare = undefined;
      worker.onmessage = ({ data }) => this.#answered(data);
      worker.onerror = (event) => {
        if (this.#worker === worker) this.#broke(new Error(event.message || "the worker broke"));
      };
      worker.postMessage({ module });
      this.#worker = worker;
    }
    return this.#worker;
  }

  #go(): void {
    if (this.#running) return;
    if (this.#spent) this.#end();
    const call = this.#waiting.shift();
    if (!call) {
      if (this.#retired) this.#end();
      return;
    }
    this.#running = call;
    const { id, verb, body } = call;
    // A worker that is there is asked at once: the page goes on drawing while it works.
    if (this.#worker) return this.#worker.postMessage({ id, verb, body });
    this.#ready().then((worker) => {
      if (this.#running === call) worker.postMessage({ id, verb, body });
    }, (error: Error) => {
      if (this.#running === call) this.#broke(error);
    });
  }

  #answered(answer: Answered): void {
    const call = this.#running;
    if (!call || call.id !== answer.id) return;
    if (!("text" in answer)) return this.#broke(new Error(answer.failed));
    this.#running = undefined;
    call.done(answer.text);
    this.#go();
  }

  /** What failed once is not trusted again: the next call gets a worker of its own. */
  #broke(error: Error): void {
    const call = this.#running;
    this.#end();
    call?.failed(error);
    this.#go();
  }
}
