import history from "../words/en/history.json";
import { learn } from "../words";

learn("history", history);
