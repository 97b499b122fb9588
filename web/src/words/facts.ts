// The words of what asks for facts: fields, questions, what is put down.

import { learn } from ".";
import fact from "./en/fact.later.json";
import place from "./en/place.later.json";
import questions from "./en/questions.later.json";

learn("fact", fact);
learn("place", place);
learn("questions", questions);
