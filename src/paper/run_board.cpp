#include "paper/run_board.h"

#include "base/text.h"
#include "joins/earth_bar.h"
#include "joins/terminals.h"
#include "paper/outgoing.h"
#include "parts/cable_words.h"
#include "parts/device_words.h"
#include "parts/ways.h"
#include "parts/words.h"

#include <fmt/format.h>

namespace toft::paper {

namespace {

using parts::Way;
using Lines = std::vector<std::pair<std::string, std::string>>;

/// The limit of the rule that judges the electrode; none where it does not arise.
std::optional<double> electrode_limit(const answer::SchemeAnswer& part) {
    for (const answer::FindingAnswer& f : part.findings) {
        if (f.rule == "electrode") return f.limit;
    }
    return std::nullopt;
}

void add_rod(const RunSheet& sheet, Lines& lines) {
    if (!sheet.building().electrode) return;
    const answer::ElectrodeAnswer& e = *sheet.building().electrode;
    const auto limit = electrode_limit(sheet.part);
    const bool allowed = !limit || e.largest_ohm <= *limit;
    lines.emplace_back(
        "Earth rod",
        fmt::format("{} rod{} of {}; {}", e.rods, e.rods == 1 ? "" : "s", figure(e.length_m, "m"),
                    allowed ? fmt::format("may read at most {}, as it was designed with",
                                          figure(e.largest_ohm, "Ω"))
                            : fmt::format("what it will read is not known; more than {} is refused",
                                          figure(*limit, "Ω"))));
    if (limit && allowed) {
        lines.emplace_back(
            "", fmt::format("If it reads more, ask the designer before it is relied on: that the "
                            "rule for the RCD ends only at {} is no leave.",
                            figure(*limit, "Ω")));
    }
    lines.emplace_back(
        "",
        fmt::format("A reading above {} may not last: more or deeper rods.",
                    figure(sheet.subject.catalogue.limits.electrode_stable.value.number(), "Ω")));
    lines.emplace_back(
        "", fmt::format("Its earthing conductor, in the ground and without mechanical guard: at "
                        "least {} sheathed copper.",
                        parts::mm2(sheet.subject.catalogue.limits.separate_buried.value.number())));
}

std::string residual_words(const Way& way) {
    if (way.rcd) return parts::rcd_words(*way.rcd);
    if (way.design && way.design->rcd_ma > 0) {
        return fmt::format("{} mA RCD type {}", significant(way.design->rcd_ma, 4),
                           way.design->rcd_type);
    }
    return "none";
}

std::string way_cable_words(const Way& way) {
    return way.design ? parts::circuit_cable_words(*way.design) : "not known: not designed";
}

std::string length_words(const Way& way) {
    if (way.design) return figure(way.design->length_m, "m");
    return way.facts && way.facts->length.known ? parts::length_words(way.facts->length)
                                                : "not known";
}

std::vector<Way> ways_here(const RunSheet& sheet) {
    return parts::ways_of(*sheet.job, *sheet.stage.far, sheet.part);
}

std::string name_of(const Way& way, int phases) {
    const std::string line = parts::line_words(way, phases);
    const std::string name = way.name.empty() ? "without a name" : way.name;
    return line.empty() ? name : name + ", " + line;
}

/// A way that feeds another building: the device at the head of that run, and its cable.
std::vector<std::string> fed_cells(const RunSheet& sheet, const answer::SchemeAnswer& fed) {
    const answer::RunAnswer& run = fed.run;
    const answer::StretchAnswer& cable = run.stretches.front();
    return {"out",
            "feeds " + building_name(sheet.subject, fed.building.id),
            parts::device_words(run.device, run.phases),
            run.rcd ? parts::rcd_words(*run.rcd) : "none",
            parts::size_words(cable) + " " + parts::family_words(cable),
            figure(run.figures.length_m, "m")};
}

}  // namespace

Lines board_lines(const RunSheet& sheet) {
    Lines lines;
    for (const std::string& line : joins::far_board_words(sheet.stage)) {
        lines.emplace_back(lines.empty() ? "Board" : "", line);
    }
    lines.emplace_back("Ways", board_ways_words(sheet.subject, sheet.part) + ".");
    lines.emplace_back("Fault current",
                       fmt::format("At the board at most {}: its devices must break that.",
                                   figure(sheet.run().figures.fault_current_far_ka, "kA")));
    lines.emplace_back("Earth", joins::source_words(sheet.stage));
    for (const std::string& line : joins::unbonded_words(sheet.stage)) {
        lines.emplace_back("", line);
    }
    if (sheet.building().electrode && sheet.run().stretches.back().armoured) {
        lines.emplace_back("",
                           "A board of insulating material, or the cable's armour and gland "
                           "kept off its metal.");
    }
    add_rod(sheet, lines);
    return lines;
}

page::Table board_table(const RunSheet& sheet) {
    page::Table table{{{"", 1}, {"", 3}}, {}};
    for (const auto& [what, words] : board_lines(sheet)) table.rows.push_back({{what, words}});
    return table;
}

page::Table ways_table(const RunSheet& sheet) {
    page::Table table{{{"No", 0.6},
                       {"Circuit", 2.5},
                       {"Device", 3.4},
                       {"RCD", 1.9},
                       {"Cable", 3.5},
                       {"Length", 1.2, page::Side::right}},
                      {}};
    for (const Way& way : ways_here(sheet)) {
        const std::string number = way.number > 0 ? std::to_string(way.number) : "all";
        table.rows.push_back(
            {{number, name_of(way, sheet.run().phases), parts::way_device_words(way),
              residual_words(way), way_cable_words(way), length_words(way)}});
    }
    for (const answer::SchemeAnswer* fed : outgoing(sheet.subject, sheet.building().id)) {
        table.rows.push_back({fed_cells(sheet, *fed)});
    }
    return table;
}

std::vector<std::string> ways_cautions(const RunSheet& sheet) {
    std::vector<std::string> all;
    for (const Way& way : ways_here(sheet)) {
        for (const std::string& line : parts::way_cautions(way)) {
            all.push_back(fmt::format("Circuit {}: {}.", way.number, line));
        }
    }
    return all;
}

}  // namespace toft::paper
