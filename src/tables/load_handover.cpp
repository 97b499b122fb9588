#include "tables/sheet.h"

namespace toft::tables {

void read_handover(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Sheet sheet(files, "test/step.csv", c.citations, faults);
    for (std::size_t i = 0; i < sheet.rows(); ++i) {
        const std::string state = sheet.word(i, "state");
        if (state != "dead" && state != "live") sheet.fault(i, "neither dead nor live: " + state);
        c.tests.push_back({sheet.word(i, "key"), state == "dead", sheet.word(i, "what"),
                           sheet.word(i, "how"), sheet.word(i, "clause"), sheet.cite(i)});
        if (c.tests.size() > 1 && c.tests.back().dead && !c.tests[c.tests.size() - 2].dead) {
            sheet.fault(i, "a dead test after a live one");
        }
    }
}

}  // namespace toft::tables
