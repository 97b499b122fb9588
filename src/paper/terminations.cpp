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
    std::string words = c.kind == joins::Kind::armour ? c.tag : c.tag + ": " + c.words;
    if (c.alike > 1) words += fmt::format(", {} times", c.alike);
    return words;
}

Terminations along(const RunSheet& sheet, std::size_t stretch) {
    const joins::End near = joins::end_of(sheet.stage, stretch, Side::near);
    const joins::End far = joins::end_of(sheet.stage, stretch, Side::far);
    Terminations all{near.name, far.name, {}};
    for (const Conductor& c : joins::conductors_of(sheet.part, stretch)) {
        all.list.push_back({conductor_words(c), joins::terminal_words(near, c),
                            joins::terminal_words(far, c), c.near == Ending::joined,
                            c.far == Ending::joined});
    }
    return all;
}

std::string bond_words(const answer::BondAnswer& bond) {
    return fmt::format("bond to the {}: {} copper, at least {} asked for", part_name(bond),
                       parts::mm2(bond.size_mm2), parts::mm2(bond.required_mm2));
}

Terminations far_earth(const RunSheet& sheet) {
    Terminations all{"Board of " + far_words(sheet), "Other end", {}};
    if (sheet.building().electrode) {
        all.list.push_back(
            {"earthing conductor of the rod", "earth bar", "rod clamp, in reach for tests"});
    }
    for (const answer::BondAnswer& bond : sheet.building().bonding) {
        all.list.push_back({bond_words(bond), "earth bar", "clamp on the " + part_name(bond)});
    }
    return all;
}

std::string breaking_words(const answer::RunAnswer& run) {
    const std::string meets = figure(run.figures.fault_current_near_ka, "kA");
    if (run.device.breaking_capacity_ka <= 0) {
        return "What it breaks its maker states; the fault current there is at most " + meets + ".";
    }
    return fmt::format("It breaks {}; the fault current there is at most {}.",
                       figure(run.device.breaking_capacity_ka, "kA"), meets);
}

void add_device(const RunSheet& sheet, Lines& lines) {
    const answer::RunAnswer& run = sheet.run();
    std::string words;
    for (const std::string& line : joins::head_words(sheet.stage)) {
        words += line + (line.back() == '.' ? " " : ". ");
    }
    lines.emplace_back("At " + near_words(sheet), words + breaking_words(run));
    if (run.rcd && run.rcd->delayed) {
        lines.emplace_back("", "Delayed: a fixed delay, or its setting turned to delay.");
    }
    if (run.rcd && !run.rcd->instead.empty()) lines.emplace_back("", run.rcd->instead);
}

std::string legs_words(const StretchAnswer& s) {
    return s.first_leg == s.last_leg ? fmt::format("leg {}", s.first_leg)
                                     : fmt::format("legs {} to {}", s.first_leg, s.last_leg);
}

void add_stretch(const RunSheet& sheet, std::size_t i, Lines& lines) {
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

std::string entry_words(const StretchAnswer& s, bool joined) {
    if (!s.armoured) return "grips the sheath and closes the hole; the sheath runs on inside";
    return fmt::format("for {} overall: {}", figure(s.overall_mm, "mm"),
                       joined ? "armour clamped, tag or earth nut, lead to the earth terminal; "
                                "paint off under the tag"
                              : "INSULATED kit: armour cut back under a sleeve, joined to nothing, "
                                "off any metal box");
}

void add_entries(const RunSheet& sheet, std::size_t i, Lines& lines) {
    const StretchAnswer& s = sheet.run().stretches[i];
    const char* what = !s.armoured ? "Entry, " : s.parallel > 1 ? "Glands, " : "Gland, ";
    if (s.armour_near == s.armour_far) {
        lines.emplace_back(what + std::string("each end"), entry_words(s, s.armour_near));
        return;
    }
    for (const Side side : {Side::near, Side::far}) {
        lines.emplace_back(what + joins::end_of(sheet.stage, i, side).name,
                           entry_words(s, side == Side::near ? s.armour_near : s.armour_far));
    }
}

}  // namespace

std::vector<Terminations> terminations_of(const RunSheet& sheet) {
    std::vector<Terminations> all;
    for (std::size_t i = 0; i < sheet.run().stretches.size(); ++i) {
        all.push_back(along(sheet, i));
    }
    Terminations earth = far_earth(sheet);
    if (!earth.list.empty()) all.push_back(std::move(earth));
    return all;
}

Lines run_lines(const RunSheet& sheet) {
    Lines lines;
    add_device(sheet, lines);
    for (std::size_t i = 0; i < sheet.run().stretches.size(); ++i) {
        add_stretch(sheet, i, lines);
        add_entries(sheet, i, lines);
    }
    return lines;
}

page::Table run_table(const RunSheet& sheet) {
    page::Table table{{{"", 1}, {"", 3}}, {}};
    for (const auto& [what, words] : run_lines(sheet)) table.rows.push_back({{what, words}});
    return table;
}

std::vector<page::Table> terminations_tables(const RunSheet& sheet) {
    std::vector<page::Table> tables;
    const auto torque = [](bool joined) { return std::string(joined ? "      /" : "none"); };
    for (const Terminations& one : terminations_of(sheet)) {
        page::Table table{
            {{"Conductor", 3.4}, {one.near, 2.7}, {"N·m", 1}, {one.far, 2.7}, {"N·m", 1}},
            {},
            true};
        for (const Termination& t : one.list) {
            table.rows.push_back(
                {{t.conductor, t.near, torque(t.near_joined), t.far, torque(t.far_joined)}});
        }
        tables.push_back(std::move(table));
    }
    return tables;
}

}  // namespace toft::paper
