#pragma once
// What the intake has left: the house's demand found in three ways against what the operator's
// fuse, the tails and the main switch carry. Page: docs/methods/intake-left.md.

#include "demand/scenario.h"

#include <array>
#include <optional>

namespace toft::demand {

/// How the house's demand is known: reckoned from its circuits, read on the tails, or what the
/// operator has agreed to or was told.
enum class Way { estimated, measured, declared };
inline constexpr std::array<Way, 3> all_ways{Way::measured, Way::declared, Way::estimated};

const char* way_word(Way way);

/// The house's largest demand, of its most loaded line.
template <class L>
struct HouseDemand {
    std::array<bool, 3> known{};              ///< by Way
    std::array<ValueIn<L, Amperes>, 3> by{};  ///< by Way

    bool is_known(Way way) const { return known[static_cast<std::size_t>(way)]; }
    const ValueIn<L, Amperes>& at(Way way) const { return by[static_cast<std::size_t>(way)]; }
    /// The way to go by: a reading before the operator's figure before an estimate.
    std::optional<Way> best() const;
};

/// What the intake's parts carry. The fuse always has a figure, if only the smallest it may be.
template <class L>
struct IntakeLimits {
    ValueIn<L, Amperes> fuse{};
    bool fuse_known = false;
    bool tails_known = false;  ///< of a section whose rating the tables hold
    ValueIn<L, Amperes> tails{};
    bool switch_known = false;
    ValueIn<L, Amperes> main_switch{};
};

/// The house's demand in every way the survey allows. Its circuits are reckoned as of today where
/// that is asked, else as likely.
template <class L>
HouseDemand<L> house_demand(L& ledger, const Place<L>& place, const site::Job& job,
                            site::Scenario scenario);

template <class L>
IntakeLimits<L> intake_limits(L& ledger, const tables::Demand& tables, const site::Intake& intake,
                              const ValueIn<L, Amperes>& fuse);

/// The least of them; the main switch counts for what is fed from a way of the board.
template <class L>
ValueIn<L, Amperes> least_limit(L& ledger, const IntakeLimits<L>& limits, bool behind_switch);

/// Limit less the house's demand: below 0 where the intake is short already.
template <class L>
ValueIn<L, Amperes> left_by(L& ledger, const ValueIn<L, Amperes>& limit,
                            const HouseDemand<L>& house, Way way);

/// The most that will be drawn of one line of the intake: house and run, both on it.
template <class L>
ValueIn<L, Amperes> new_demand(L& ledger, const ValueIn<L, Amperes>& house,
                               const ValueIn<L, Amperes>& run);

}  // namespace toft::demand
