#pragma once
// Turning facts into figures for one corner: a stated figure is itself, an assumed or missing one
// takes the end of its range that the corner asks for and is listed as open.

#include "study/setting.h"

#include <fmt/format.h>

#include <string>
#include <vector>

namespace toft::study {

/// What a fact is called and which rulebook range serves when it is missing.
struct FactName {
    std::string pointer;
    std::string says;
    const char* range;      ///< key of rules/unknown.csv; empty when the fact has no range
    const char* unit = "";  ///< of a stated range, where the rulebook has none
};

/// Bounds of a fact with the words for where they come from.
template <class Q>
struct Settled {
    Bounds<Q> bounds;
    const char* from = "";
    bool found = true;  ///< false when neither the survey nor the rulebook has a figure
};

struct GroundMemo;

class Settler {
public:
    Settler(const tables::Catalogue& catalogue, const Corner& corner, std::vector<OpenFact>& open,
            GroundMemo& memo)
        : catalogue_(catalogue), corner_(corner), open_(open), memo_(memo) {}

    GroundMemo& memo() { return memo_; }

    /// `unit` is what one unit of the rulebook's range is in Q's own unit (1000 for kA into A).
    template <class Q>
    Settled<Q> settle(const site::Fact<Q>& fact, const FactName& name, double unit = 1) {
        if (fact.known) return stated(fact, name, unit);
        const tables::OpenRange* range = tables::find_open_range(catalogue_, name.range);
        if (!range) return {{}, "not stated", false};
        if (range->low.value < range->high.value) {
            open_.push_back({name.pointer, name.says, range->low.value, range->high.value,
                             range->unit, false, range->low.citation});
        }
        return {ends(name.pointer, Q(range->low.value * unit), Q(range->high.value * unit), unit),
                "not stated: the rulebook's range", true};
    }

    /// Whether a fact that nobody stated is read as unknown, rather than at a figure somebody
    /// tries.
    bool leaves_open(const std::string& pointer) const { return corner_.leaves_open(pointer); }

    /// A yes or no; `yes_is_worse` when yes is the answer that asks for more. True means yes.
    bool settle(site::Answer answer, const FactName& name, bool yes_is_worse);

private:
    template <class Q>
    Settled<Q> stated(const site::Fact<Q>& fact, const FactName& name, double unit) {
        const bool open = fact.standing == site::Standing::assumed && !fact.single();
        if (!open) return {{fact.high, fact.low}, site::standing_word(fact.standing), true};
        const tables::OpenRange* range = tables::find_open_range(catalogue_, name.range);
        open_.push_back({name.pointer, name.says, number_of(fact.low) / unit,
                         number_of(fact.high) / unit, range ? range->unit : name.unit, true,
                         nullptr});
        return {ends(name.pointer, fact.low, fact.high, unit), "assumed range", true};
    }

    template <class Q>
    Bounds<Q> ends(const std::string& pointer, Q low, Q high, double unit) const {
        if (const Part* part = corner_.part_of(pointer)) {
            low = Q(part->low * unit);
            high = Q(part->high * unit);
        }
        return at_end(corner_.at(pointer), low, high);
    }

    const tables::Catalogue& catalogue_;
    const Corner& corner_;
    std::vector<OpenFact>& open_;
    GroundMemo& memo_;
};

}  // namespace toft::study
