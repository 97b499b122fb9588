#include "paper/terminations.h"

#include "base/text.h"
#include "joins/conductor.h"
#include "joins/terminals.h"
#include "parts/cable_words.h"
#include "parts/device_words.h"
#include "parts/words.h"

#include <fmt/format.h>

namespace toft::paper {

namespace {

using answer::StretchAnswer;
using joins::Conductor;
using joins::Ending;
using joins::Side;
using Lines = std::vector<std::pair<std::string, std::string>>;

std::string conductor_words(const Conductor& c) {
    std::string words = c.tag + ": " + c.words;
    if (c.alike > 1) words += fmt::format(" (one in each of {} cables)", c.alike);
    return words;
}

void add_end(const RunSheet& sheet, std::size_t stretch, Side side, std::vector<Termination>& all) {
    const joins::End end = joins::end_of(sheet.stage, stretch, side);
    std::string where = end.name;
    if (sheet.run().stretches.size() > 1) {
        where += fmt::format(", stretch {}", stretch + 1);
    }
    for (const Conductor& c : joins::conductors_of(sheet.part, stretch)) {
        const bool joined = (side == Side::near ? c.near : c.far) == Ending::joined;
        all.push_back({where, conductor_words(c), joins::terminal_words(end, c), joined});
    }
}

std::string bond_words(const answer::BondAnswer& bond) {
    return fmt::format("main bond to the {}: {} copper, at least {} asked for", bond.part,
                       parts::mm2(bond.size_mm2), parts::mm2(bond.required_mm2));
}

void add_far_earth(const RunSheet& sheet, std::vector<Termination>& all) {
    const std::string where = "Earth bar of " + far_words(sheet);
    if (sheet.building().electrode) {
        all.push_back({where, "earthing conductor of the own electrode", "earth bar"});
        all.push_back({where, "the same, at the rod", "rod clamp, in reach for tests"});
    }
    for (const answer::BondAnswer& bond : sheet.building().bonding) {
        all.push_back({where, bond_words(bond), "earth bar"});
        all.push_back({where, "the same, at the " + bond.part, "clamp with its label"});
    }
}

void add_device(const RunSheet& sheet, Lines& lines) {
    const answer::RunAnswer& run = sheet.run();
    for (const std::string& line : joins::head_words(sheet.stage)) {
        lines.emplace_back(lines.empty() ? "At " + near_words(sheet) : "", line);
    }
    lines.emplace_back(
        "", fmt::format("It breaks {}; the fault current there is at most {}.",
                        run.device.breaking_capacity_ka > 0
                            ? figure(run.device.breaking_capacity_ka, "kA")
                            : std::string("a current that its maker states: not known here"),
                        figure(run.figures.fault_current_near_ka, "kA")));
    if (run.rcd && run.rcd->delayed) {
        lines.emplace_back("", "Delayed: a fixed delay, or its setting turned to delay.");
    }
    if (run.rcd && !run.rcd->instead.empty()) lines.emplace_back("", run.rcd->instead);
}

std::string legs_words(const StretchAnswer& s) {
    return s.first_leg == s.last_leg ? fmt::format("leg {}", s.first_leg)
                                     : fmt::format("legs {} to {}", s.first_leg, s.last_leg);
}

void add_cable(const RunSheet& sheet, std::size_t i, Lines& lines) {
    const StretchAnswer& s = sheet.run().stretches[i];
    const bool several = sheet.run().stretches.size() > 1;
    const std::string what =
        several ? fmt::format("Cable, stretch {} ({})", i + 1, legs_words(s)) : "Cable";
    std::string words = fmt::format("{} {}, {}, {} in all", parts::size_words(s),
                                    parts::family_words(s), s.standard, figure(s.length_m, "m", 4));
    const std::string thin = parts::thin_core_words(s);
    if (!thin.empty()) words += ", " + thin;
    if (s.parallel > 1) words += ", of one length";
    if (parts::aluminium(s)) words += "; aluminium: terminals and glands made for it";
    if (!s.laid.empty()) words += "; " + s.laid;
    lines.emplace_back(what, words);
    if (s.separate_mm2) {
        lines.emplace_back("", "beside it " + parts::mm2(*s.separate_mm2) +
                                   " copper, green-and-yellow, along the whole stretch");
    }
}

void add_entries(const RunSheet& sheet, std::size_t i, Lines& lines) {
    const StretchAnswer& s = sheet.run().stretches[i];
    for (const Side side : {Side::near, Side::far}) {
        const std::string name = joins::end_of(sheet.stage, i, side).name;
        if (!s.armoured) {
            lines.emplace_back("Entry, " + name,
                               "grips the sheath and closes the hole; the sheath runs on inside");
            continue;
        }
        const bool joined = side == Side::near ? s.armour_near : s.armour_far;
        const std::string what = (s.parallel > 1 ? "Glands, " : "Gland, ") + name;
        lines.emplace_back(
            what, fmt::format("for {} overall: {}", figure(s.overall_mm, "mm"),
                              joined ? "armour clamped, tag or earth nut, lead to the earth "
                                       "terminal; paint off under the tag"
                                     : "INSULATED kit: armour cut back under a sleeve, joined to "
                                       "nothing, off any metal box"));
    }
}

}  // namespace

std::vector<Termination> terminations_of(const RunSheet& sheet) {
    std::vector<Termination> all;
    for (std::size_t i = 0; i < sheet.run().stretches.size(); ++i) {
        add_end(sheet, i, Side::near, all);
        add_end(sheet, i, Side::far, all);
    }
    add_far_earth(sheet, all);
    return all;
}

Lines run_lines(const RunSheet& sheet) {
    Lines lines;
    add_device(sheet, lines);
    for (std::size_t i = 0; i < sheet.run().stretches.size(); ++i) {
        add_cable(sheet, i, lines);
        add_entries(sheet, i, lines);
    }
    return lines;
}

page::Table run_table(const RunSheet& sheet) {
    page::Table table{{{"", 1}, {"", 3}}, {}};
    for (const auto& [what, words] : run_lines(sheet)) table.rows.push_back({{what, words}});
    return table;
}

page::Table terminations_table(const RunSheet& sheet) {
    page::Table table{{{"Conductor", 4}, {"Goes on", 4}, {"Maker's torque", 1.5}, {"Used", 1.2}},
                      {}};
    table.to_write_in = true;
    std::string where;
    for (const Termination& one : terminations_of(sheet)) {
        if (one.where != where) table.rows.push_back({{one.where}, true});
        where = one.where;
        const std::string none = one.joined ? "" : "none";
        table.rows.push_back({{one.conductor, one.on, none, none}});
    }
    return table;
}

}  // namespace toft::paper
