import { learn } from "../words";
import words from "../words/en/answer.later.json";

learn("answer", words);
