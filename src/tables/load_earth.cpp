#include "tables/sheet.h"

namespace toft::tables {

namespace {

void read_soils(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Sheet soil(files, "earth/soil.csv", c.citations, faults);
    for (std::size_t i = 0; i < soil.rows(); ++i) {
        c.soils.push_back({soil.word(i, "soil"),
                           soil.cited(i, ohm_metres(soil.number(i, "low_ohm_m"))),
                           soil.cited(i, ohm_metres(soil.number(i, "high_ohm_m")))});
    }
}

void read_rods(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Sheet rods(files, "earth/rod_parallel.csv", c.citations, faults);
    for (std::size_t i = 0; i < rods.rows(); ++i) rods.points(c.rod_parallel, i, "rods", "factor");
    sort_points(c.rod_parallel);
    Sheet groups(files, "earth/rod_lambda.csv", c.citations, faults);
    for (std::size_t i = 0; i < groups.rows(); ++i) {
        const bool line = groups.word(i, "arrangement") == "line";
        groups.points(line ? c.electrode.rods_in_line : c.electrode.rods_in_square, i, "rods",
                      "lambda");
    }
    sort_points(c.electrode.rods_in_line);
    sort_points(c.electrode.rods_in_square);
}

void read_wires(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Sheet stars(files, "earth/wire_star.csv", c.citations, faults);
    for (std::size_t i = 0; i < stars.rows(); ++i) {
        c.electrode.stars.push_back({stars.number(i, "arms"), stars.figure(i, "c0"),
                                     stars.figure(i, "c1"), stars.figure(i, "c2"),
                                     stars.figure(i, "c4")});
    }
    Sheet concrete(files, "earth/concrete.csv", c.citations, faults);
    if (concrete.rows() != 1) {
        faults.push_back({"data", "earth/concrete.csv", "one row is wanted", "", {}});
        return;
    }
    c.electrode.concrete_low = concrete.cited(0, ohm_metres(concrete.number(0, "low_ohm_m")));
    c.electrode.concrete_high = concrete.cited(0, ohm_metres(concrete.number(0, "high_ohm_m")));
}

void read_seasons(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Sheet seasons(files, "earth/season.csv", c.citations, faults);
    for (std::size_t i = 0; i < seasons.rows(); ++i) {
        c.electrode.seasons.push_back({seasons.word(i, "season"),
                                       seasons.cited(i, metres(seasons.number(i, "depth_m"))),
                                       seasons.figure(i, "factor")});
    }
    if (c.electrode.seasons.empty()) {
        faults.push_back({"data", "earth/season.csv", "no season is stated", "", {}});
    }
}

}  // namespace

void read_earth(EmbeddedFiles files, Catalogue& catalogue, Faults& faults) {
    read_soils(files, catalogue, faults);
    read_rods(files, catalogue, faults);
    read_wires(files, catalogue, faults);
    read_seasons(files, catalogue, faults);
}

}  // namespace toft::tables
