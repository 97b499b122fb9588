#include "codec/job_parts.h"

#include "base/text.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::codec {

namespace {

void read_board(Reader& in, site::HouseBoard& board) {
    board.spare_ways = in.fact<double>("spare_ways", {0, 40, true});
    board.max_device = in.fact<Amperes>("max_device_a", {1, 125});
    board.takes = in.listed("takes", device_standards());
    board.behind_rcd = in.fact<Amperes>("behind_rcd_ma", {0, 1000}, 1e-3);
    board.rcd_delayed = in.answer("rcd_delayed");
    board.rcd_type = in.word<site::RcdType>("rcd_type");
    board.breaking = in.fact<Amperes>("breaking_ka", {0.5, 50}, 1000);
    in.finish();
}

}  // namespace

const std::vector<std::string>& device_standards() {
    static const std::vector<std::string> standards{
        "BS 88-2", "BS 88-3", "BS 1361", "BS 3036", "BS EN 60898", "BS EN 61009", "BS EN 60947-2"};
    return standards;
}

std::optional<int> read_phases(Reader& in) {
    const auto phases = in.number("phases", {1, 3, true});
    if (!phases) return std::nullopt;
    if (*phases == 2) {
        in.fault("out-of-range", "phases", "a supply has one phase or three", "", {"1", "3"});
        return std::nullopt;
    }
    return static_cast<int>(*phases);
}

namespace {

/// Faults a curve or a rating that no device of the standard has.
void check_made(Reader& in, const site::NamedDevice& named, const tables::Catalogue& catalogue) {
    std::vector<std::string> curves;
    std::vector<std::string> ratings;
    bool made = false;
    const auto add_once = [](std::vector<std::string>& list, const std::string& word) {
        if (std::find(list.begin(), list.end(), word) == list.end()) list.push_back(word);
    };
    for (const tables::Device& d : catalogue.devices) {
        if (d.standard != named.standard) continue;
        if (!d.curve.empty()) add_once(curves, d.curve);
        if (!named.curve.empty() && named.curve != d.curve) continue;
        add_once(ratings, significant(d.rating.number(), 6));
        made = made || d.rating == named.rating;
    }
    if (ratings.empty()) {
        in.fault("unknown-device", "curve",
                 fmt::format("{} has no type {}", named.standard, named.curve), "", curves);
    } else if (!made) {
        in.fault("unknown-device", "rating_a",
                 fmt::format("no {} device of {} A is tabulated", named.standard,
                             significant(named.rating.number(), 6)),
                 "", ratings);
    }
}

}  // namespace

std::optional<site::NamedDevice> read_device(Reader& in, const char* key,
                                             const tables::Catalogue* catalogue) {
    auto device = in.object(key);
    if (!device) return std::nullopt;
    site::NamedDevice named;
    named.standard = device->listed("standard", device_standards(), true);
    named.curve = device->listed("curve", {"B", "C", "D"});
    const auto rating = device->number("rating_a", {1, 400}, true);
    if (rating && !named.standard.empty()) {
        named.rating = amperes(*rating);
        if (catalogue) check_made(*device, named, *catalogue);
    }
    device->finish();
    if (!rating || named.standard.empty()) return std::nullopt;
    return named;
}

void read_intake(Reader& in, site::Job& job) {
    site::Intake& intake = job.intake;
    if (const auto phases = read_phases(in)) intake.phases = *phases;
    if (const auto u0 = in.number("u0_v", {200, 260})) intake.u0 = volts(*u0);
    if (const auto word = in.word<site::Earthing>("earthing", true)) intake.earthing = *word;
    intake.ze = in.fact<Ohms>("ze_ohm", {0.005, 5000});
    intake.ze_declared = in.fact<Ohms>("ze_declared_ohm", {0.005, 5000});
    intake.line_neutral_loop = in.fact<Ohms>("line_neutral_loop_ohm", {0.005, 10});
    intake.pscc = in.fact<Amperes>("pscc_ka", {0.02, 60}, 1000);
    intake.pefc = in.fact<Amperes>("pefc_ka", {0.0005, 60}, 1000);
    intake.service_fuse = read_device(in, "service_fuse");
    intake.looped = in.answer("looped");
    intake.supply_neutral = in.fact<SquareMillimetres>("supply_neutral_mm2", {4, 400});
    intake.tails = in.fact<SquareMillimetres>("tails_mm2", {4, 120});
    intake.tails_length = in.fact<Metres>("tails_m", {0.1, 100});
    intake.earthing_conductor = in.fact<SquareMillimetres>("earthing_conductor_mm2", {0, 120});
    intake.main_bonding = in.fact<SquareMillimetres>("main_bonding_mm2", {0, 120});
    intake.electrode = in.fact<Ohms>("electrode_ohm", {0.1, 100000});
    intake.earth_without_neutral = in.fact<Ohms>("earth_without_neutral_ohm", {0.05, 100000});
    if (auto board = in.object("board")) read_board(*board, intake.board);
    intake.isolator = in.answer("isolator");
    intake.main_switch = in.fact<Amperes>("main_switch_a", {16, 400});
    intake.agreed = in.fact<Amperes>("agreed_demand_a", {10, 400});
    intake.demand = in.fact<Amperes>("demand_a", {0, 400});
    in.finish();
}

}  // namespace toft::codec
