// Any bytes as a job: it loads or is refused with faults that say something; what loads is
// designed, and no scheme shown fails a rule; and its ground is worked out, no upper end below its
// lower one.

#include "codec/job.h"
#include "answer/ground.h"
#include "codec/answer.h"
#include "codec/ground.h"
#include "finding/rule.h"
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
    return parts <= 12 && job.ground.pins.size() + job.ground.rods.size() <= 12;
}

/// A figure that nothing bounds is infinite, never a number that is none.
void ordered(double low, double high, const char* what) { require(low <= high, what); }

void judge(const answer::GroundAnswer& ground) {
    for (const auto& layer : ground.soil.strata) {
        ordered(layer.low_ohm_m, layer.high_ohm_m, "a layer's resistivity is a range");
        if (layer.best_m) ordered(*layer.low_m, *layer.high_m, "its thickness is one");
    }
    for (const auto& side : ground.sides) {
        ordered(side.year.low_ohm, side.year.high_ohm, "the year of an electrode is a range");
        for (const auto& point : side.over_length) {
            ordered(point.low_ohm, point.high_ohm, "a rod's resistance is a range");
        }
        ordered(side.separation.transferred_low, side.separation.transferred_high,
                "what is transferred is a range");
        for (const auto& way : side.lost_neutral.ways) {
            ordered(way.low_v, way.high_v, "volts are a range");
            ordered(way.electrode_low_a, way.electrode_high_a, "amperes are a range");
            for (const auto& body : way.body) ordered(body.low_ma, body.high_ma, "so is a body");
            for (const auto& p : way.over_load) ordered(p.low_v, p.high_v, "at every load");
        }
    }
    require(is_json(codec::write_ground(ground)), "what is said of the ground is JSON");
}

/// The same job with a shop of one family and one sort of device where it names none: a search of
/// the whole shop takes the time of hundreds of other jobs.
site::Job in_a_small_shop(site::Job job) {
    if (job.wishes.offer.empty()) job.wishes.offer = {"armoured XLPE copper"};
    if (job.wishes.devices.empty()) job.wishes.devices = {"BS EN 60898"};
    return job;
}

void judge(const site::Job& whole) {
    const site::Job job = in_a_small_shop(whole);
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
    judge(answer::ground({catalogue(), book(), job, false, nullptr}));
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
