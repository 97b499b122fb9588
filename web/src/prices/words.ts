import prices from "../words/en/prices.json";
import { learn } from "../words";

learn("prices", prices);
