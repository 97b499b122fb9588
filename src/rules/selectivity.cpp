#include "rules/selectivity.h"

#include "finding/judge.h"
#include "study/selectivity.h"

namespace toft::rules {

const RuleInfo selectivity_rule{
    .name = "selectivity",
    .title = "the device nearest to a fault is the only one that opens",
    .clause = "536.4",
    .unit = "A",
    .sees = Sees::both,
    .needs = study::Stage::circuits,
    .only_cautions = true,
    .longer = Trend::either,
    .thicker = Trend::either,
    .heavier = Trend::either,
    .larger = Trend::either,
    .reads = "the operator's fuse, the circuits and their devices, the fault current at the origin",
};

namespace {

using device::Selective;

constexpr const char* in_order =
    "at every fault the device nearest to it is sure to be the only one that opens";
constexpr const char* house_dark =
    "a fault at the run's beginning or along it may blow the operator's fuse as well: the house "
    "goes dark until the operator comes";
constexpr const char* building_dark =
    "a fault in one circuit may open the device at the house as well: everything out there goes "
    "dark and someone walks to the house";
constexpr const char* both_dark =
    "a fault in one circuit may open the device at the house, and one along the run the operator's "
    "fuse: then the building or the house goes dark with it";

constexpr const char* before_dark =
    "a fault at the run's beginning or along it may open the device at the head of the run before "
    "as well: the building it is fed from goes dark with it";
constexpr const char* head_dark =
    "a fault in one circuit may open the device at the head of the run as well: everything in the "
    "building goes dark";
constexpr const char* both_behind_dark =
    "a fault in one circuit may open the device at the head of the run, and one along the run that "
    "of the run before: then the building, or the one it is fed from, goes dark with it";

/// What goes dark, by which of the two pairs is sure.
const char* dark_words(bool at_house, bool before, bool building) {
    if (before && building) return in_order;
    if (before) return at_house ? building_dark : head_dark;
    if (building) return at_house ? house_dark : before_dark;
    return at_house ? both_dark : both_behind_dark;
}

template <class L>
bool sure(const study::SelectivePair<L>& pair) {
    return pair.result.verdict == Selective::selective;
}

/// The larger, the farther from being selective up to the prospective current.
template <class L>
double shortfall(const study::SelectivePair<L>& pair) {
    return plain(pair.prospective) / plain(pair.result.to);
}

}  // namespace

template <class L>
Finding<L> selectivity(L& ledger, const Case<L>& c) {
    study::SelectivePair<L> worst = study::cut_out_pair(ledger, c.setting, c.scheme);
    const bool house = sure(worst);
    bool building = true;
    const auto far = study::far_devices(c.setting, c.figures);
    for (std::size_t i = 0; i < far.size(); ++i) {
        const auto pair = study::far_pair(ledger, c.setting, c.scheme, c.figures, far[i]);
        building = building && sure(pair);
        if (sure(worst) == sure(pair) ? shortfall(worst) < shortfall(pair) : sure(worst)) {
            worst = pair;
        }
    }
    Finding<L> f = reaches(ledger, selectivity_rule, worst.result.to, worst.prospective);
    f.verdict = house && building ? Verdict::meets : Verdict::caution;
    f.says = dark_words(c.setting.house.at_house, house, building);
    return f;
}

template Finding<Silent> selectivity(Silent&, const Case<Silent>&);
template Finding<Recording> selectivity(Recording&, const Case<Recording>&);

}  // namespace toft::rules
