// What stands below the answer's first part: fetched as soon as that is on screen.

import "./words";

export { Demand } from "./Demand";
export { Earth } from "./Earth";
export { Circuits, Expected } from "./Expected";
export { Fell, Levers } from "./Fell";
export { Pictures } from "./Pictures";
export { Others } from "./Plot";
