// Jobs that tests of the place begin with.

import type { Job } from "./job";

/** A shed that is fed in three legs, with a pipe, a rod and two circuits. */
export function shedJob(): Job {
  return {
    format: "toft-job/1",
    intake: { earthing: "TT" },
    buildings: [
      { id: "house", at: "origin" },
      {
        id: "shed", at_m: [20, 10],
        metalwork: [{ what: "water pipe", through_m: [[30, 0], [20, 10]] }],
        electrode: { rods: 1, at_m: [23, 12] },
        circuits: [
          { name: "Sockets", kind: "socket radial", load_w: 2000 },
          { name: "Lights", kind: "lighting" },
        ],
      },
    ],
    runs: [{
      id: "shed-feed", from: "house", to: "shed",
      legs: [
        { method: "clipped", length_m: { value: 5, basis: "assumed" }, through_m: [[5, 0]] },
        { method: "buried direct", length_m: { value: 15, basis: "measured" }, through_m: [[14, 0], [14, 10]] },
        { method: "clipped", length_m: { value: 6, basis: "assumed" }, through_m: [[20, 10]] },
      ],
    }],
  };
}

export function bareJob(): Job {
  return { format: "toft-job/1", intake: {}, buildings: [{ id: "house", at: "origin" }], runs: [] };
}
