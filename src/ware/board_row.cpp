#include "ware/board_row.h"

#include "base/text.h"

#include <fmt/format.h>

namespace toft::ware {

namespace {

double circuits_of(const RunBill& part) {
    double count = 0;
    for (const price::BillLine& line : part.bill) {
        if (line.item == circuit_item) count += line.quantity;
    }
    return count;
}

std::string names_words(const std::vector<std::string>& names) {
    std::string words;
    for (const std::string& name : names) words += (words.empty() ? "" : ", ") + name;
    return words;
}

/// What the ways are for, where it is not circuits alone.
std::string made_up_words(const RunBill& part) {
    const Behind& behind = part.behind;
    if (behind.feeds.empty() && !(behind.spare_ways > 0)) return "";
    std::string words = fmt::format("{}: {} ways for circuits", part.scheme.building.name,
                                    significant(circuits_of(part), 3));
    if (!behind.feeds.empty()) {
        words += fmt::format(", {} to feed {}", behind.feeds.size(), names_words(behind.feeds));
    }
    if (behind.spare_ways > 0) {
        words += fmt::format(", {} spare", significant(behind.spare_ways, 3));
    }
    return words;
}

bool kept_from_armour(const answer::SchemeAnswer& scheme) {
    return scheme.building.electrode && !scheme.run.stretches.empty() &&
           scheme.run.stretches.back().armoured;
}

}  // namespace

std::string ways_words(const RunBill& part) {
    const double ways =
        circuits_of(part) + static_cast<double>(part.behind.feeds.size()) + part.behind.spare_ways;
    if (!(ways > 0)) return "";
    return fmt::format("at least {} way{}", significant(ways, 3), ways > 1 ? "s" : "");
}

Draft board_row(Draft named, const RunBill& part) {
    Row& row = named.row;
    row.size = ways_words(part);
    if (kept_from_armour(part.scheme)) {
        row.what = "consumer unit of insulating material, with main switch";
        row.note =
            "on an earth of its own, so that armour on another earth cannot touch its box; where "
            "the local code wants a box that does not burn, in a cabinet that does not, or of "
            "steel with armour and gland kept off its metal and an RCD at the incomer: whoever is "
            "responsible for the work decides";
    }
    const std::string made_up = made_up_words(part);
    if (!made_up.empty()) row.note += (row.note.empty() ? "" : "; ") + made_up;
    return named;
}

}  // namespace toft::ware
