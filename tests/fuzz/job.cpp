// Any bytes as a job: it loads or is refused with faults that say something; what loads is
// designed, and no scheme shown fails a rule.

#include "codec/job.h"
#include "codec/answer.h"
#include "rules/rule.h"
#include "tables/embedded.h"

#include <nlohmann/json.hpp>

#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <string_view>

namespace {

using namespace toft;

/// Stops the fuzzer, which then keeps the input.
void require(bool holds, const char* what) {
    if (holds) return;
    std::fprintf(stderr, "does not hold: %s\n", what);
    std::abort();
}

const tables::Catalogue& catalogue() {
    static const auto loaded = tables::load_catalogue(tables::embedded_files());
    require(loaded.has_value(), "the tables load");
    return *loaded;
}

const price::Book& book() {
    static const auto read =
        price::read_book("demo", tables::embedded_text("price/demo.csv"), catalogue());
    require(read.has_value(), "the price book loads");
    return *read;
}

bool is_json(const std::string& text) {
    const auto json = nlohmann::json::parse(text, nullptr, false);
    return json.is_object();
}

void judge(const Faults& faults) {
    require(!faults.empty(), "a refusal has a fault");
    for (const Fault& fault : faults) {
        require(!fault.code.empty(), "a fault has a code");
        require(!fault.says.empty(), "a fault says something");
        require(fault.pointer.empty() || fault.pointer.front() == '/', "a pointer is one");
    }
    require(is_json(codec::write_faults(faults)), "faults are JSON");
}

/// Small enough to be designed thousands of times.
bool small(const site::Job& job) {
    std::size_t parts = 0;
    for (const auto& run : job.runs) parts += run.legs.size();
    for (const auto& building : job.buildings) {
        parts += building.circuits.size() + building.metalwork.size();
    }
    return parts <= 12;
}

void judge(const site::Job& job) {
    const answer::Answer answer = answer::design({catalogue(), book(), job, false, nullptr});
    for (const auto& scheme : answer.schemes) {
        require(!scheme.findings.empty(), "a scheme was judged");
        for (const auto& finding : scheme.findings) {
            require(finding.verdict != rules::Verdict::fails, "no scheme shown fails a rule");
        }
        const bool open = !scheme.conditional_on.empty();
        require(answer.sound || open, "a scheme without conditions makes the answer sound");
    }
    require(is_json(codec::write_answer(answer)), "an answer is JSON");
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto job = codec::read_job(text, catalogue());
    if (!job) {
        judge(job.error());
    } else if (small(*job)) {
        judge(*job);
    }
    return 0;
}
