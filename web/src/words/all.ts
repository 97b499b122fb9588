// For unit tests, which take rooms apart: the words that each room would bring with it.

import "../clash/words";
import "../history/words";
import "../jobs/words";
import "../papers/words";
import "../prices/words";
import "../readings/words";
import "../shell/words";
import "./facts";
import "../answer/words";
