#include "codec/job_parts.h"

#include "base/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace toft::codec {

namespace {

std::string plain(double x) { return significant(x, 6); }

/// Sizes that a family is tabulated in, with that number of cores where one is named.
std::vector<std::string> sizes_of(const tables::Catalogue& catalogue, const std::string& family,
                                  const std::optional<int>& cores) {
    std::vector<std::string> sizes;
    for (const tables::Cable& cable : catalogue.cables) {
        if (family != tables::family_word(cable.family) || (cores && *cores != cable.cores))
            continue;
        const std::string size = plain(cable.section.number());
        if (std::find(sizes.begin(), sizes.end(), size) == sizes.end()) sizes.push_back(size);
    }
    return sizes;
}

std::vector<std::string> cores_of(const tables::Catalogue& catalogue, const std::string& family) {
    std::vector<std::string> counts;
    for (const tables::Cable& cable : catalogue.cables) {
        if (family != tables::family_word(cable.family)) continue;
        const std::string count = std::to_string(cable.cores);
        if (std::find(counts.begin(), counts.end(), count) == counts.end()) counts.push_back(count);
    }
    return counts;
}

/// The cable a leg names: its family, and if it likes the cores and the section.
void read_leg_cable(Reader& in, const tables::Catalogue& catalogue, site::Leg& leg) {
    leg.family = in.listed("family", offered_families());
    const auto cores = in.number("cores", {2, 5, true});
    const auto live = in.number("live_mm2", {0.5, 400});
    if (leg.family.empty()) {
        for (const char* key : {"cores", "live_mm2"}) {
            if (in.has(key)) {
                in.fault("missing", key, "name the cable's family too", "", offered_families());
            }
        }
        return;
    }
    if (cores) {
        leg.cores = static_cast<int>(*cores);
        const auto known = cores_of(catalogue, leg.family);
        const std::string word = std::to_string(*leg.cores);
        if (std::find(known.begin(), known.end(), word) == known.end()) {
            in.fault("unknown-size", "cores",
                     fmt::format("{} is not tabulated with {} cores", leg.family, word), "", known);
            return;
        }
    }
    if (!live) return;
    leg.live = square_millimetres(*live);
    const auto sizes = sizes_of(catalogue, leg.family, leg.cores);
    const std::string size = plain(*live);
    if (std::find(sizes.begin(), sizes.end(), size) != sizes.end()) return;
    std::string nearest;
    for (const std::string& s : sizes) {
        const double gap = std::fabs(std::strtod(s.c_str(), nullptr) - *live);
        if (nearest.empty() || gap < std::fabs(std::strtod(nearest.c_str(), nullptr) - *live)) {
            nearest = s;
        }
    }
    in.fault("unknown-size", "live_mm2",
             fmt::format("{} is not made, or not tabulated, in {} mm2", leg.family, size), nearest,
             sizes);
}

site::Leg read_leg(Reader& in, const tables::Catalogue& catalogue) {
    site::Leg leg;
    if (const auto method = in.word<site::LegMethod>("method", true)) leg.method = *method;
    leg.length = in.fact<Metres>("length_m", {0.05, 5000});
    if (!in.has("length_m")) {
        in.fault("missing", "length_m", "every leg needs its length in metres");
    }
    leg.ambient = in.fact<Celsius>("ambient_c", {-10, 60});
    leg.other_loaded_circuits = in.fact<double>("other_loaded_circuits", {0, 5, true});
    leg.depth = in.fact<Metres>("depth_m", {0.05, 3});
    leg.surface = in.word<site::Surface>("surface");
    leg.insulation_length = in.fact<Metres>("insulation_length_m", {0, 5000});
    leg.indoors = in.answer("indoors");
    leg.concealed = in.answer("concealed");
    leg.height = in.fact<Metres>("height_m", {1, 30});
    leg.trench = in.text("trench");
    read_leg_cable(in, catalogue, leg);
    in.finish();
    return leg;
}

site::Run read_run(Reader& in, const tables::Catalogue& catalogue) {
    site::Run run;
    run.id = in.text("id", true);
    run.from = in.text("from", true);
    run.to = in.text("to", true);
    for (Reader& leg : in.objects("legs", 50)) run.legs.push_back(read_leg(leg, catalogue));
    run.fed_from = in.word<site::FedFrom>("fed_from");
    run.phases = read_phases(in);
    run.device = read_device(in, "device", &catalogue);
    const auto& carried = site::words<site::AlsoCarried>();
    for (const std::string& word : in.list_of("also_carries", carried)) {
        const auto at = std::find(carried.begin(), carried.end(), word) - carried.begin();
        run.also_carries.push_back(static_cast<site::AlsoCarried>(at));
    }
    if (in.takes("existing")) {
        in.fault("not-supported", "existing",
                 "existing cables are not judged by this version; leave the key out to plan a new "
                 "one");
    }
    in.finish();
    return run;
}

}  // namespace

const std::vector<std::string>& offered_families() {
    static const std::vector<std::string> families = [] {
        std::vector<std::string> words;
        for (std::size_t f = 0; f < tables::families; ++f) {
            words.emplace_back(tables::family_word(static_cast<tables::Family>(f)));
        }
        return words;
    }();
    return families;
}

void read_runs(Reader& in, const tables::Catalogue& catalogue, site::Job& job) {
    for (Reader& run : in.objects("runs", 200)) job.runs.push_back(read_run(run, catalogue));
}

void read_wishes(Reader& in, site::Job& job) {
    site::Wishes& wishes = job.wishes;
    if (auto drop = in.object("max_voltage_drop_percent")) {
        wishes.drop_run = drop->fact<double>("run", {0.1, 10});
        wishes.drop_lighting = drop->fact<double>("lighting_total", {0.1, 10});
        wishes.drop_other = drop->fact<double>("other_total", {0.1, 10});
        drop->finish();
    }
    wishes.offer = in.list_of("offer", offered_families());
    wishes.devices = in.list_of("devices", device_standards());
    wishes.smallest_core = in.fact<SquareMillimetres>("smallest_core_mm2", {1, 95});
    if (const auto prefer = in.word<site::Prefer>("prefer")) wishes.prefer = *prefer;
    wishes.scenario = in.word<site::Scenario>("scenario");
    wishes.start_dip = in.fact<double>("max_starting_dip_percent", {1, 40});
    in.finish();
}

}  // namespace toft::codec
