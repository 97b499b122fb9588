#include "codec/job_parts.h"

#include "base/text.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::codec {

namespace {

std::string plain(SquareMillimetres section) { return significant(section.number(), 6); }

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
        sizes.push_back(plain(cable.section));
    }
    if (sizes.empty()) {
        in.fault("unknown-size", "cores",
                 fmt::format("{} is not tabulated with {} cores", e.family, e.cores), "", cores);
    } else {
        in.fault("unknown-size", "live_mm2",
                 fmt::format("{} is not made, or not tabulated, in {} mm2", e.family, plain(e.live)),
                 "", sizes);
    }
    return nullptr;
}

/// A protective core of another size than the tables have was made, but is not judged.
void read_cpc(Reader& in, const tables::Cable* cable) {
    const auto cpc = in.number("cpc_mm2", {0.5, 400});
    if (!cpc || !cable || square_millimetres(*cpc) == cable->cpc) return;
    std::vector<std::string> made;
    if (cable->cpc > square_millimetres(0)) made.push_back(plain(cable->cpc));
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
    if (!e.device) return;
    if (!e.fed_from) {
        in.fault("missing", "fed_from", "say where the device at its head stands", "",
                 site::words<site::FedFrom>());
    }
    const bool breaker =
        e.device->standard == "BS EN 60898" || e.device->standard == "BS EN 61009";
    if (breaker && e.device->curve.empty()) {
        in.fault("missing", "device", "say the curve of the device at its head: B, C or D");
    }
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

}  // namespace

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

}  // namespace toft::codec
