#include "tables/catalogue.h"

#include "tables/sheet.h"

namespace toft::tables {

namespace {

std::string first_line(std::string_view text) {
    return std::string(text.substr(0, text.find_first_of("\r\n")));
}

void read_sources(EmbeddedFiles files, Catalogue& catalogue, Faults& faults) {
    Sheet sheet(files, "sources.csv", catalogue.citations, faults);
    for (std::size_t i = 0; i < sheet.rows(); ++i) {
        catalogue.sources.push_back({sheet.word(i, "key"), sheet.word(i, "title"),
                                     sheet.word(i, "edition"), sheet.word(i, "where"),
                                     sheet.word(i, "seen"), sheet.word(i, "note")});
    }
}

void read_for_answers(EmbeddedFiles files, Catalogue& catalogue, Faults& faults) {
    for (std::size_t i = 0; i < files.count; ++i) {
        if (files.first[i].name == "VERSION") catalogue.version = first_line(files.first[i].text);
    }
    if (catalogue.version.empty()) {
        faults.push_back({"data", "VERSION", "the data have no version", "", {}});
    }
    read_cable_constants(files, catalogue, faults);
    read_makes(files, catalogue, faults);
    read_cables(files, catalogue, faults);
    read_devices(files, catalogue, faults);
    read_rulebook(files, catalogue, faults);
    read_demand(files, catalogue, faults);
    read_earth(files, catalogue, faults);
    read_shock(files, catalogue, faults);
    read_guard(files, catalogue, faults);
    read_found(files, catalogue, faults);
}

}  // namespace

Outcome<Catalogue> load_catalogue(EmbeddedFiles files) {
    Catalogue catalogue;
    Faults faults;
    read_sources(files, catalogue, faults);
    read_for_answers(files, catalogue, faults);
    read_ask(files, catalogue, faults);
    read_levers(files, catalogue, faults);
    read_tolerances(files, catalogue, faults);
    read_additions(files, catalogue, faults);
    read_handover(files, catalogue, faults);
    read_ground_and_ware(files, catalogue, faults);
    if (!faults.empty()) return failed(std::move(faults));
    return catalogue;
}

Outcome<Catalogue> load_for_answers(EmbeddedFiles files) {
    Catalogue catalogue;
    Faults faults;
    read_for_answers(files, catalogue, faults);
    if (!faults.empty()) return failed(std::move(faults));
    return catalogue;
}

const Conductor* find_conductor(const Catalogue& catalogue, SquareMillimetres section) {
    for (const Conductor& conductor : catalogue.conductors) {
        if (conductor.metal == Metal::copper && conductor.section == section) return &conductor;
    }
    return nullptr;
}

const CircuitKindRow* find_circuit_kind(const Catalogue& catalogue, std::string_view kind) {
    for (const CircuitKindRow& row : catalogue.circuit_kinds) {
        if (row.kind == kind) return &row;
    }
    return nullptr;
}

const OpenRange* find_open_range(const Catalogue& catalogue, std::string_view fact) {
    for (const OpenRange& range : catalogue.open_ranges) {
        if (range.fact == fact) return &range;
    }
    return nullptr;
}

}  // namespace toft::tables
