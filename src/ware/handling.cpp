#include "ware/handling.h"

#include "base/text.h"
#include "ware/at_run.h"
#include "ware/cable_of.h"
#include "ware/drum.h"
#include "ware/fixing.h"
#include "ware/pull.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::ware {

namespace {

using answer::StretchAnswer;

/// At most so long: what is not stated may be the whole stretch.
Metres leg_length(const site::Leg& leg, const StretchAnswer& stretch) {
    return leg.length.known ? leg.length.high : metres(stretch.length_m);
}

/// The longest row of legs in duct without a leg between; 0 for none.
Metres longest_in_duct(const site::Run& run, const StretchAnswer& stretch) {
    Metres longest, so_far;
    const auto last = std::min(static_cast<std::size_t>(stretch.last_leg), run.legs.size());
    for (auto i = static_cast<std::size_t>(stretch.first_leg - 1); i < last; ++i) {
        const bool duct = run.legs[i].method == site::LegMethod::buried_in_duct;
        so_far = duct ? so_far + leg_length(run.legs[i], stretch) : metres(0);
        longest = most(longest, so_far);
    }
    return longest;
}

/// The bill's length of the stretch's cable in pieces.
std::string cut_of(const RunBill& part, std::size_t stretch, int pieces) {
    const auto& stretches = part.scheme.run.stretches;
    for (const price::BillLine& line : part.bill) {
        const int number = stretches.size() == 1 ? 0 : static_cast<int>(stretch) + 1;
        const bool here = line.part == price::Part::run && line.sort == price::Sort::material &&
                          line.item.rfind("cable ", 0) == 0 && line.number == number;
        if (!here) continue;
        const Metres whole = whole_metres(metres(line.quantity / pieces));
        const std::string one = significant(whole.number(), 6) + " m";
        return pieces == 1 ? one : fmt::format("{} pieces of {}", pieces, one);
    }
    return "";
}

std::string pull_here(const tables::Catalogue& catalogue, const RunBill& part,
                      const StretchAnswer& stretch, const tables::Cable& cable) {
    const Metres duct = longest_in_duct(part.run, stretch);
    if (!(duct > metres(0))) return "";
    std::string words = pull_words(catalogue, cable, duct);
    if (stretch.separate_mm2) words += "; the conductor beside it comes on top";
    return words;
}

}  // namespace

std::vector<Handling> handling_of(const tables::Catalogue& catalogue, const RunBill& part) {
    std::vector<Handling> all;
    const auto& stretches = part.scheme.run.stretches;
    for (std::size_t i = 0; i < stretches.size(); ++i) {
        const StretchAnswer& stretch = stretches[i];
        const int pieces = bought_of(stretch);
        const tables::Cable* cable =
            find_cable(catalogue, stretch.family, stretch.cores, stretch.live_mm2);
        if (pieces < 1 || !cable) continue;
        all.push_back({part.scheme.building.name,
                       size_words(*cable) + ", " + cable_words(catalogue, *cable),
                       cut_of(part, i, pieces), bend_words(catalogue, *cable),
                       pull_here(catalogue, part, stretch, *cable)});
    }
    return all;
}

}  // namespace toft::ware
