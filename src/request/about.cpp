#include "base/program.h"
#include "request/body.h"
#include "request/verbs.h"
#include "rules/rulebook.h"

namespace toft::request {

namespace {

std::string about(Bench& bench, std::string_view text, const Asked&) {
    Body body(text);
    if (!body.finish()) return body.faults_text();
    const codec::Json json{{"program", program_name},
                           {"version", program_version},
                           {"edition", rules::edition()},
                           {"data_version", bench.stock().catalogue.version}};
    return json.dump() + "\n";
}

}  // namespace

Verb about_verb() {
    return {"about", "which program this is, and of which rules and data", "", "", false, {},
            about};
}

}  // namespace toft::request
