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
    in.places("through_m");
    read_leg_cable(in, catalogue, leg);
    in.finish();
    return leg;
}

const std::vector<std::string> colours_of_cores{"brown and blue", "red and black"};

/// The row of that cable, or a fault that names what there is.
const tables::Cable* named_cable(Reader& in, const tables::Catalogue& catalogue,
                                 const site::Existing& e) {
    std::vector<std::string> cores;
    std::vector<std::string> sizes;
    for (const tables::Cable& cable : catalogue.cables) {
        if (e.family != tables::family_word(cable.family)) continue;
        const std::string count = std::to_string(cable.cores);
        if (std::find(cores.begin(), cores.end(), count) == cores.end()) cores.push_back(count);
        if (cable.cores != e.cores) continue;
        if (cable.section == e.live) return &cable;
        sizes.push_back(plain(cable.section.number()));
    }
    if (sizes.empty()) {
        in.fault("unknown-size", "cores",
                 fmt::format("{} is not tabulated with {} cores", e.family, e.cores), "", cores);
    } else {
        in.fault("unknown-size", "live_mm2",
                 fmt::format("{} is not made, or not tabulated, in {} mm2", e.family,
                             plain(e.live.number())),
                 "", sizes);
    }
    return nullptr;
}

/// A protective core of another size than the tables have was made, but is not judged.
void read_cpc(Reader& in, const tables::Cable* cable) {
    const auto cpc = in.number("cpc_mm2", {0.5, 400});
    if (!cpc || !cable || square_millimetres(*cpc) == cable->cpc) return;
    std::vector<std::string> made;
    if (cable->cpc > square_millimetres(0)) made.push_back(plain(cable->cpc.number()));
    in.fault("unknown-size", "cpc_mm2",
             made.empty() ? "this cable has no protective core of its own: leave cpc_mm2 out, its "
                            "armour is known"
                          : "a protective core of that size is not tabulated in this cable: it "
                            "cannot be judged; leave existing out to plan a new cable",
             "", made);
}

void read_head(Reader& in, const tables::Catalogue& catalogue, site::Existing& e) {
    e.device = read_device(in, "device", &catalogue);
    e.fed_from = in.word<site::FedFrom>("fed_from");
}

void read_readings(Reader& in, site::Existing& e) {
    constexpr double mega = 1e6;
    e.insulation = in.fact<Ohms>("insulation_megohm", {0, 10000}, mega);
    e.r1_r2 = in.fact<Ohms>("r1_r2_ohm", {0, 100});
    e.through = in.word<site::ReadThrough>("read_through");
    e.r1_rn = in.fact<Ohms>("r1_rn_ohm", {0, 100});
    e.zs = in.fact<Ohms>("zs_ohm", {0.01, 1000});
    e.armour = in.fact<Ohms>("armour_ohm", {0, 100});
}

site::Existing read_existing(Reader& in, const tables::Catalogue& catalogue) {
    site::Existing e;
    e.family = in.listed("family", offered_families(), true);
    const auto cores = in.number("cores", {2, 5, true}, true);
    const auto live = in.number("live_mm2", {0.5, 400}, true);
    const tables::Cable* cable = nullptr;
    if (cores && live && !e.family.empty()) {
        e.cores = static_cast<int>(*cores);
        e.live = square_millimetres(*live);
        cable = named_cable(in, catalogue, e);
    }
    read_cpc(in, cable);
    read_head(in, catalogue, e);
    e.condition = in.word<site::Condition>("condition");
    e.colours = in.listed("colours", colours_of_cores);
    if (const auto year = in.number("laid_in", {1900, 2100, true})) {
        e.laid_in = static_cast<int>(*year);
    }
    read_readings(in, e);
    in.finish();
    return e;
}

/// Says so where what is stated of the cable that is there is kept and not used.
void say_what_existing_leaves(const site::Run& run, site::Job& job) {
    const site::Existing& e = *run.existing;
    const auto unused = [&](const char* what) {
        job.unused.push_back(fmt::format("run {}: {}", run.id, what));
    };
    if (e.laid_in) unused("the year its cable was laid is kept but judges nothing: readings do");
    if (!e.device) return;
    const bool breaker = e.device->standard == "BS EN 60898" || e.device->standard == "BS EN 61009";
    if (!e.fed_from) {
        unused("where the device of the cable that is there stands is not said: it may not stay");
    } else if (breaker && e.device->curve.empty()) {
        unused("the curve of the device of the cable that is there is not said: it may not stay");
    }
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
    run.found = in.list_of("found", tables::found_words(catalogue.found, {"run"}));
    if (auto existing = in.object("existing")) run.existing = read_existing(*existing, catalogue);
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
    for (Reader& run : in.objects("runs", 200)) {
        job.runs.push_back(read_run(run, catalogue));
        if (job.runs.back().existing) say_what_existing_leaves(job.runs.back(), job);
    }
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
