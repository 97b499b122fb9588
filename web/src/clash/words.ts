import clash from "../words/en/clash.json";
import { learn } from "../words";

learn("clash", clash);
