// The bench as the rooms see it.
export {
  ask, author, behind, BROKE_OFF, canRedo, canUndo, chosenKey, clash, faults, first, job, jobId,
  hasJob, levers, NOT_LOADED, NOT_WHOLE, ofProgram, ownPrices, refused, revision, revisionShown, said, sync, title, working, type Sync,
} from "./state";
export { change, get, redo, set, undo, type Pace } from "./change";
export { choose } from "./answer";
export { firstHeld, rest, type Rest } from "../engine/rest";
export { tryRest } from "./rest";
export { archiveJob, blankJob, demoJob, listJobs, newJob, openJob } from "./open";
export { about, mustPair, serverThere, tryServer } from "./reach";
export { catchUp, save } from "./save";
export { pathOf, pointerOf, same, valueAt, withValue } from "./pointer";
