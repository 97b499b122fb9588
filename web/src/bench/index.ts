// The bench as the rooms see it.
export {
  ask, author, behind, canRedo, canUndo, chosenKey, clash, faults, first, job, jobId, levers,
  ownPrices, revision, said, sync, working, type Sync,
} from "./state";
export { change, get, redo, set, undo, type Pace } from "./change";
export { choose } from "./answer";
export { newJob, openJob } from "./open";
export { pathOf, pointerOf, same, valueAt, withValue } from "./pointer";
