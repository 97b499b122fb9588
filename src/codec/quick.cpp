#include "codec/quick.h"

#include "codec/document.h"
#include "codec/job.h"

#include <cmath>
#include <cstdlib>

namespace toft::codec {

namespace {

/// A number and the unit behind it, blanks allowed between.
struct Measure {
    double value = 0;
    std::string unit;
    bool good = false;
};

Measure measure(const std::string& text) {
    char* end = nullptr;
    const double value = std::strtod(text.c_str(), &end);
    std::string unit(end);
    while (!unit.empty() && unit.front() == ' ') unit.erase(0, 1);
    return {value, unit, end != text.c_str() && std::isfinite(value)};
}

Fault at_fault(const char* option, std::string says, std::vector<std::string> allowed) {
    return {"wrong-kind", option, std::move(says), "", std::move(allowed)};
}

/// Puts the load into the building; false when it cannot be read.
bool read_load(const std::string& text, Json& building) {
    const Measure m = measure(text);
    if (!m.good) return false;
    if (m.unit == "kW" || m.unit == "kw" || m.unit == "KW") {
        building["load_w"] = m.value * 1000;
    } else if (m.unit == "W" || m.unit == "w") {
        building["load_w"] = m.value;
    } else if (m.unit == "A" || m.unit == "a") {
        building["load_a"] = m.value;
    } else {
        return false;
    }
    return true;
}

/// The option that a fault of the job file is about.
std::string option_of(const std::string& pointer) {
    if (pointer.rfind("/intake/earthing", 0) == 0) return "--earthing";
    if (pointer.rfind("/buildings", 0) == 0) return "--load";
    if (pointer.find("/length_m") != std::string::npos) return "--distance";
    if (pointer.find("/method") != std::string::npos) return "--method";
    return pointer;
}

}  // namespace

Outcome<site::Job> quick_job(const QuickFacts& facts, const tables::Catalogue& catalogue) {
    Faults faults;
    Json building{{"id", "outbuilding"}};
    if (!read_load(facts.load, building)) {
        faults.push_back(at_fault("--load", "say the load in kW, W or A, such as 5kW or 20A",
                                  {"5kW", "800W", "20A"}));
    }
    const Measure distance = measure(facts.distance);
    if (!distance.good || !(distance.unit.empty() || distance.unit == "m")) {
        faults.push_back(at_fault("--distance", "say the distance in metres, such as 34", {"34"}));
    }
    if (!faults.empty()) return failed(std::move(faults));
    const Json job{
        {"format", "toft-job/1"},
        {"title", "Three facts: " + facts.distance + ", " + facts.load + ", " + facts.earthing},
        {"intake", {{"earthing", facts.earthing}}},
        {"buildings", Json::array({{{"id", "house"}, {"at", "origin"}}, building})},
        {"runs",
         Json::array({{{"id", "feed"},
                       {"from", "house"},
                       {"to", "outbuilding"},
                       {"legs", Json::array({{{"method", facts.method.empty() ? "buried direct"
                                                                              : facts.method},
                                              {"length_m", distance.value}}})}}})}};
    auto read = read_job(job.dump(-1, ' ', false, Json::error_handler_t::replace), catalogue);
    if (read) return read;
    for (Fault fault : read.error()) {
        fault.pointer = option_of(fault.pointer);
        faults.push_back(std::move(fault));
    }
    return failed(std::move(faults));
}

}  // namespace toft::codec
