import type { Fault } from "../contract";

/** What the engine found wrong with what it was given. */
export class EngineFaults extends Error {
  constructor(readonly faults: Fault[]) {
    super(faults.map((fault) => fault.says).join("; "));
  }
}

/** The engine's module did not come. */
export class NotLoaded extends Error {}

/** What is asked needs the whole module, which has not come. */
export class RestAway extends NotLoaded {}

/** The whole module that came is of another build than this page and its small one. */
export class OtherBuild extends Error {}

/** A call that a newer one has made idle. */
export class Overtaken extends Error {
  constructor() {
    super("overtaken");
  }
}
