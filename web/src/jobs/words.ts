import jobs from "../words/en/jobs.json";
import devices from "../words/en/devices.json";
import { learn } from "../words";

learn("jobs", jobs);
learn("devices", devices);
