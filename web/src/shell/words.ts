import { learn } from "../words";
import words from "../words/en/shell.later.json";

learn("shell", words);
