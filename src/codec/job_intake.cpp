#include "codec/job_parts.h"

namespace toft::codec {

namespace {

const std::vector<std::string> standards{"BS 88-2",     "BS 88-3",     "BS 1361",      "BS 3036",
                                         "BS EN 60898", "BS EN 61009", "BS EN 60947-2"};

void read_board(Reader& in, site::HouseBoard& board) {
    board.spare_ways = in.fact<double>("spare_ways", {0, 40, true});
    board.max_device = in.fact<Amperes>("max_device_a", {1, 125});
    board.behind_rcd = in.fact<Amperes>("behind_rcd_ma", {0, 1000}, 1e-3);
    in.finish();
}

}  // namespace

std::optional<site::NamedDevice> read_device(Reader& in, const char* key) {
    auto device = in.object(key);
    if (!device) return std::nullopt;
    site::NamedDevice named;
    named.standard = device->listed("standard", standards, true);
    named.curve = device->listed("curve", {"B", "C", "D"});
    const auto rating = device->number("rating_a", {1, 400}, true);
    device->finish();
    if (!rating || named.standard.empty()) return std::nullopt;
    named.rating = amperes(*rating);
    return named;
}

void read_intake(Reader& in, site::Job& job) {
    site::Intake& intake = job.intake;
    if (const auto phases = in.number("phases", {1, 3})) {
        intake.phases = static_cast<int>(*phases);
        if (*phases != 1) {
            in.fault("not-supported", "phases", "this version plans single-phase supplies only", "",
                     {"1"});
        }
    }
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
    if (auto board = in.object("board")) read_board(*board, intake.board);
    intake.demand = in.fact<Amperes>("demand_a", {0, 400});
    in.finish();
}

void read_ground(Reader& in, const tables::Catalogue& catalogue, site::Job& job) {
    std::vector<std::string> soils;
    for (const tables::Soil& soil : catalogue.soils) soils.push_back(soil.word);
    job.ground.soil = in.listed("soil", soils);
    job.ground.resistivity = in.fact<OhmMetres>("resistivity_ohm_m", {0.5, 50000});
    auto readings = in.objects("wenner", 200);
    for (Reader& reading : readings) {
        reading.number("spacing_m", {0.05, 200}, true);
        reading.number("resistance_ohm", {0.0001, 1e6}, true);
        reading.finish();
    }
    if (!readings.empty()) {
        job.unused.push_back("soil readings are kept in the job but not used here");
    }
    job.ground.thermal_resistivity = in.fact<double>("thermal_resistivity_k_m_per_w", {0.5, 3});
    job.ground.temperature = in.fact<Celsius>("temperature_c", {0, 40});
    in.finish();
}

}  // namespace toft::codec
