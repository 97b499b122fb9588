import readings from "../words/en/readings.json";
import { learn } from "../words";

learn("readings", readings);
