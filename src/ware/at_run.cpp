#include "ware/at_run.h"

#include "study/scheme.h"
#include "ware/cable_of.h"

#include <algorithm>

namespace toft::ware {

using answer::StretchAnswer;

const StretchAnswer* AtRun::stretch(int number) const {
    const auto& stretches = part_.scheme.run.stretches;
    const auto i = static_cast<std::size_t>(std::max(1, number) - 1);
    return i < stretches.size() ? &stretches[i] : nullptr;
}

const StretchAnswer* AtRun::at_leg(int leg) const {
    for (const StretchAnswer& s : part_.scheme.run.stretches) {
        if (s.first_leg <= leg && leg <= s.last_leg) return &s;
    }
    return nullptr;
}

const tables::Cable* AtRun::cable(const StretchAnswer* stretch) const {
    if (!stretch) return nullptr;
    return find_cable(c_, stretch->family, stretch->cores, stretch->live_mm2);
}

bool AtRun::in_duct(int leg) const {
    if (leg < 1 || static_cast<std::size_t>(leg) > part_.run.legs.size()) return false;
    return part_.run.legs[static_cast<std::size_t>(leg - 1)].method ==
           site::LegMethod::buried_in_duct;
}

std::vector<Metres> AtRun::pulled_in(int leg) const {
    const StretchAnswer* at = at_leg(leg);
    const tables::Cable* found = cable(at);
    if (!found) return {};
    std::vector<Metres> all{found->overall.value};
    if (!at->separate_mm2) return all;
    Metres single;
    for (const tables::SingleRow& row : c_.ware.singles) {
        if (row.section == square_millimetres(*at->separate_mm2)) single = row.overall;
    }
    all.push_back(single);
    return all;
}

std::string AtRun::thickness_words(int leg) const {
    const tables::Cable* found = cable(at_leg(leg));
    if (!found) return "";
    const Metres overall = found->overall.value;
    return "for " + (overall > metres(0) ? mm_words(overall) : size_words(*found));
}

int bought_of(const StretchAnswer& stretch) {
    const bool old = stretch.laid == study::laid_word(study::Laid::kept) ||
                     stretch.laid == study::laid_word(study::Laid::doubled);
    return old ? stretch.parallel - 1 : stretch.parallel;
}

}  // namespace toft::ware
