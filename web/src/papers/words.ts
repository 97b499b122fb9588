import papers from "../words/en/papers.json";
import { learn } from "../words";

learn("papers", papers);
