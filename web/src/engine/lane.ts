// One worker and the calls that wait for it, in order. A lane may be cleared: what runs in it is
// ended with its worker, and a new one starts with the next call.

import { NotLoaded, Overtaken } from "./faults";

export type Asked = { module: WebAssembly.Module } | { id: number; verb: string; body: string };
export type Answered = { id: number; text: string } | { id: number; failed: string };

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
  #running: Call | undefined;
  #waiting: Call[] = [];
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

  get busy(): boolean {
    return this.#running !== undefined;
  }

  #end(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
    this.#running = undefined;
  }

  async #ready(): Promise<WorkerLike> {
    const module = await this.module().catch((error) => {
      throw new NotLoaded(String(error));
    });
    if (!this.#worker) {
      const worker = this.start();
      worker.onmessage = ({ data }) => this.#answered(data);
      worker.onerror = (event) => this.#broke(new Error(event.message || "the worker broke"));
      worker.postMessage({ module });
      this.#worker = worker;
    }
    return this.#worker;
  }

  #go(): void {
    if (this.#running) return;
    const call = this.#waiting.shift();
    if (!call) return;
    this.#running = call;
    this.#ready().then((worker) => {
      if (this.#running !== call) return;
      worker.postMessage({ id: call.id, verb: call.verb, body: call.body });
    }, (error: Error) => this.#broke(error));
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
