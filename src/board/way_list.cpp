#include "board/way_list.h"

#include "base/text.h"
#include "board/ink.h"
#include "board/wires.h"
#include "parts/word_column.h"
#include "parts/words.h"
#include "picture/verdict_mark.h"

#include <algorithm>

namespace toft::board {

namespace {

constexpr double list_letters = 11.5;
constexpr double name_in = 27;
constexpr double between_columns = 26;
constexpr double mark_wide = 17;

/// "Zs" is said with its word before it.
std::string matter_line(const std::vector<MatterWords>& matters) {
    std::string line;
    for (const MatterWords& m : matters) {
        if (m.over) continue;
        line += (line.empty() ? "" : "; ") + m.word + (m.symbol.empty() ? "" : " " + m.symbol) +
                " " + m.value;
    }
    return line;
}

/// Why a circuit is not designed, as the answer says it; empty when it does not.
std::string reason_for(const Way& way, const std::vector<std::string>& assumed) {
    const std::string start = "circuit " + way.name + " is not judged: ";
    for (const std::string& line : assumed) {
        if (line.rfind(start, 0) == 0) return line.substr(start.size());
    }
    return "";
}

std::string load_line(const Way& way) {
    const site::Circuit& c = *way.facts;
    std::string line = site::word(c.kind);
    if (way.phases == 3) line += ", three-phase";
    line += c.load_w.known ? ", load " + significant(c.load_w.high, 4) + " W" : ", load not known";
    if (way.design) line += ", Ib " + significant(way.design->design_current_a, 3) + " A";
    return line;
}

void entry(const Way& way, const ListOf& of, WordColumn& column) {
    column.gap(6);
    column.placed(numbered_ring(way.number, {column.left() + ring_radius + 1, column.y() + 9}),
                  column.y());
    const double top = column.y();
    column.words(way.name, {.size = list_letters + 0.5, .weight = Weight::bold}, 8, name_in);
    for (const std::string& line : way_lines(way, of)) {
        column.words(line, {.size = list_letters}, 6, name_in);
    }
    for (const std::string& caution : way_cautions(way)) {
        const Point mark{column.left() + name_in + 6, column.y() + 0.62 * list_letters};
        column.placed(picture::verdict_mark(rules::Verdict::caution, mark, 11), column.y());
        column.words(caution, {.size = list_letters}, 4, name_in + mark_wide);
    }
    column.placed({}, top + 2 * ring_radius + 4);
    column.gap(6);
}

/// Each way as a group of its own, and how high it is in a column of that width.
struct SetWay {
    Items items;
    double high = 0;
};

std::vector<SetWay> entries(const ListOf& of, double wide) {
    std::vector<SetWay> all;
    for (const Way& way : of.ways) {
        WordColumn column(0, wide, 0);
        entry(way, of, column);
        const double high = column.y();
        all.push_back({column.take(), high});
    }
    return all;
}

/// The least height that so many columns hold the entries in, none broken.
double column_height(const std::vector<SetWay>& all, int columns) {
    double least = 0;
    double sum = 0;
    for (const SetWay& one : all) {
        least = std::max(least, one.high);
        sum += one.high;
    }
    double height = std::max(least, sum / columns);
    const auto needed = [&](double limit) {
        int count = 1;
        double filled = 0;
        for (const SetWay& one : all) {
            if (filled > 0 && filled + one.high > limit + 1e-6) {
                ++count;
                filled = 0;
            }
            filled += one.high;
        }
        return count;
    };
    while (needed(height) > columns) height += 4;
    return height;
}

}  // namespace

std::vector<std::string> way_lines(const Way& way, const ListOf& of) {
    std::vector<std::string> lines;
    const std::string device = way_device_words(way);
    lines.push_back(way.device ? device : "device " + device);
    if (way.rcd) {
        const std::string residual = significant(way.rcd->sensitivity_ma, 4) + " mA, type " +
                                     way.rcd->type + (way.rcd->delayed ? ", delayed" : "");
        const bool open = way.device && !way.residual_apart() && way.device->kind != "RCBO";
        lines.push_back((way.residual_apart() ? "RCD beside it " : "residual current ") + residual +
                        (open ? ", in this device or beside it" : ""));
        if (!way.rcd->instead.empty()) lines.push_back("or type " + way.rcd->instead);
    } else {
        lines.push_back(way.residual_inside() ? "residual current: not known"
                                              : "no residual current device");
    }
    if (way.design) {
        lines.push_back(circuit_cable_words(*way.design) + ", " +
                        significant(way.design->length_m, 4) + " m");
    } else {
        const std::string reason = reason_for(way, of.assumed);
        lines.push_back("cable not known" + (reason.empty() ? "" : ": " + reason));
    }
    const std::string on = line_words(way, of.phases);
    if (way.facts) lines.push_back((on.empty() ? "" : on + "; ") + load_line(way));
    if (!way.design) return lines;
    const std::string matters = matter_line(matters_of(*way.design));
    if (!matters.empty()) lines.push_back(matters);
    if (way.design->residual_clears && !way.design->loop_ohm) {
        lines.push_back("an earth fault is cleared by the residual current device");
    }
    lines.push_back("R1 + R2 cold " + significant(way.design->r1_plus_r2_20c_ohm, 3) + " Ω");
    return lines;
}

WayList way_list(const ListOf& of, Box box, int columns) {
    const double wide = (box.width() - between_columns * (columns - 1)) / columns;
    std::vector<SetWay> all = entries(of, wide);
    const double height = column_height(all, columns);
    WayList list{{}, box.top};
    Point at{box.left, box.top};
    for (SetWay& one : all) {
        if (at.y > box.top && at.y + one.high > box.top + height + 1e-6) {
            at = {at.x + wide + between_columns, box.top};
        }
        if (at.y > box.top) {
            list.items.emplace_back(Line{at, at + Point{wide, 0}, stroked(palette::faint)});
        }
        list.items.emplace_back(Group{std::move(one.items), at, "", "way", ""});
        at.y += one.high;
        list.foot = std::max(list.foot, at.y);
    }
    return list;
}

}  // namespace toft::board
