// Whether a job fits schema/job.json; for tests.

import Ajv from "ajv/dist/2020";
import schema from "../../../schema/job.json";
import type { Job } from "./job";

const check = new Ajv({ strict: false, allErrors: true }).compile(schema);

/** What the schema has against a job; empty when it fits. */
export function misfits(job: Job): string[] {
  check(job);
  return (check.errors ?? []).map((error) => `${error.instancePath} ${error.message}`);
}
