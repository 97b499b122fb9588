// Lists to look things up in: rules, sources, schemas.

#include "codec/reference.h"
#include "cli/command_parts.h"
#include "cli/commands.h"
#include "server/openapi.h"
#include "tables/embedded.h"

namespace toft::cli {

int rules(bool json) {
    print(json ? codec::write_rules() : rules_screen());
    return done;
}

int sources() {
    return with_bench([](const Workbench& bench) {
        print(sources_screen(bench.catalogue));
        return static_cast<int>(done);
    });
}

int schema(const std::string& which) {
    if (which == "api") {
        print(server::openapi_text());
        return done;
    }
    const std::string_view text = toft::tables::embedded_text("schema/" + which + ".json");
    if (text.empty()) {
        complain(
            "toft: no such schema; there are job, answer, ask, levers, tolerance, later, ground, "
            "dark, first, faults and api\n");
        return wrong_usage;
    }
    print(std::string(text));
    return done;
}

}  // namespace toft::cli
