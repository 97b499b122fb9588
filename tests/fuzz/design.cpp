// Small jobs: what is designed shows no scheme that fails a rule, and the ground is worked out with
// no upper end below its lower one. The work is bounded, so that thousands of jobs fit into an
// hour: the shop holds one cable and one device where a job leaves the choice, and jobs of many
// parts are passed over.

#include "codec/ground.h"
#include "codec/job.h"
#include "finding/rule.h"
#include "fuzz/change.h"
#include "fuzz/fuzzing.h"
#include "groundwork/ground.h"

#include <algorithm>
#include <cstdint>
#include <string_view>

namespace {

using namespace toft;
using fuzz::catalogue;
using fuzz::require;

const price::Book& book() {
    static const auto read =
        price::read_book("demo", tables::embedded_text("price/demo.csv"), catalogue());
    require(read.has_value(), "the price book loads");
    return *read;
}

bool few(const site::Electrode& e) {
    const bool rods = !e.rods.known || e.rods.high <= 3;
    const bool metal = e.kind == site::ElectrodeKind::rods ||
                       e.kind == site::ElectrodeKind::buried_wire ||
                       e.kind == site::ElectrodeKind::foundation;
    return rods && metal && e.spikes.size() <= 6;
}

/// Small enough to be designed some hundred times a minute.
bool small(const site::Job& job) {
    std::size_t parts = 0;
    for (const auto& run : job.runs) parts += run.legs.size();
    for (const auto& building : job.buildings) {
        parts += building.circuits.size() + building.metalwork.size();
        if (!few(building.electrode)) return false;
    }
    return parts <= 8 && job.ground.pins.size() + job.ground.rods.size() <= 4 &&
           job.ground.layers.size() <= 2;
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
    require(fuzz::is_json(codec::write_ground(ground)), "what is said of the ground is JSON");
}

/// The same job with little to choose from.
site::Job in_a_small_shop(site::Job job) {
    if (job.wishes.offer.empty()) job.wishes.offer = {"armoured XLPE copper"};
    if (job.wishes.devices.empty()) job.wishes.devices = {"BS EN 60898"};
    for (site::Run& run : job.runs) {
        if (!run.phases) run.phases = 1;
        if (!run.device)
            run.device = site::NamedDevice{job.wishes.devices.front(), "B", amperes(32)};
        for (site::Leg& leg : run.legs) {
            if (!leg.live) leg.live = square_millimetres(10);
            if (!leg.cores && leg.family.empty()) leg.cores = 3;
        }
    }
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
    require(fuzz::is_json(codec::write_answer(answer)), "an answer is JSON");
    judge(answer::ground({catalogue(), book(), job, false, nullptr}));
}

}  // namespace

/// A changed job that still is one and small; what cannot be read is for the other program.
extern "C" std::size_t LLVMFuzzerCustomMutator(std::uint8_t* data, std::size_t size,
                                               std::size_t most, unsigned seed) {
    const std::string text(reinterpret_cast<const char*>(data), size);
    fuzz::Change change(seed);
    for (int attempt = 0; attempt < 20; ++attempt) {
        const std::string changed = change.of(text);
        if (changed.empty() || changed.size() > most) continue;
        const auto job = codec::read_job(changed, catalogue());
        if (!job || !small(*job)) continue;
        std::copy(changed.begin(), changed.end(), data);
        return changed.size();
    }
    return size;
}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto job = codec::read_job(text, catalogue());
    if (job && small(*job)) judge(*job);
    return 0;
}
