#include "rules/intake_capacity.h"

#include "finding/judge.h"

namespace toft::rules {

const RuleInfo intake_capacity_rule{
    .name = "intake-capacity",
    .title = "the operator's fuse, the tails and the main switch carry house and run together",
    .clause = "132.16, 311.1, 313.1",
    .unit = "A",
    .sees = Sees::head,
    .heavier = Trend::worse,
    .reads = "the house's demand, the operator's fuse, the tails and the main switch, the load",
};

namespace {

/// What to do where house and run together are too much, by the part that is the weakest.
template <class L>
const char* remedy_words(const demand::IntakeLimits<L>& limits, bool behind_switch) {
    const bool tails = limits.tails_known && plain(limits.tails) < plain(limits.fuse);
    const Amperes before = tails ? plain(limits.tails) : plain(limits.fuse);
    if (behind_switch && limits.switch_known && plain(limits.main_switch) < before) {
        return "house and run together are more than the main switch of the house's board: feed "
               "the run from the tails, or have the switch changed";
    }
    if (tails) {
        return "house and run together are more than the tails are trusted with: have larger tails "
               "fitted, or manage the load so that both never draw their most at once";
    }
    return limits.fuse_known
               ? "house and run together are more than the operator's fuse: ask the operator for a "
                 "larger one, or manage the load so that both never draw their most at once"
               : "house and run together may be more than the operator's fuse: read it, and ask "
                 "the operator for a larger one or manage the load if it is too small";
}

constexpr const char* alone_words =
    "the run alone asks for more than the intake carries: a larger supply or a smaller load";

constexpr const char* measure_words =
    "what the house draws is not known, so nothing says that the intake carries both: measure it "
    "on the tails over a winter week, or list the house's circuits";

}  // namespace

template <class L>
Finding<L> intake_capacity(L& ledger, const Case<L>& c) {
    const study::HouseSetting<L>& house = c.setting.house;
    if (!house.at_house) {
        return plain_finding<L>(intake_capacity_rule, Verdict::meets,
                                "fed from an outbuilding: the run that leaves the house answers "
                                "for the intake");
    }
    const bool behind_switch = c.scheme.fed_from == site::FedFrom::spare_way;
    const auto limit = demand::least_limit(ledger, house.limits, behind_switch);
    const auto out = c.setting.others_beside
                         ? ledger.let({"I.out", "all runs that leave the house"},
                                      c.setting.demand + c.setting.beside)
                         : c.setting.demand;
    const bool alone = !within(number_of(plain(out)), number_of(plain(limit)));
    if (!alone && lacks(c.setting, study::Unsaid::house_demand)) {
        return plain_finding<L>(intake_capacity_rule, Verdict::not_known, measure_words);
    }
    const auto way = house.demand.best();
    // At the house a demand that is not known leaves no finding but that the run alone is too much.
    Finding<L> f = way ? keeps_under(ledger, intake_capacity_rule,
                                     demand::new_demand(ledger, house.demand.at(*way), out), limit)
                       : keeps_under(ledger, intake_capacity_rule, out, limit);
    if (alone) {
        f.says = alone_words;
    } else if (f.verdict == Verdict::fails) {
        f.verdict = Verdict::caution;
        f.says = remedy_words(house.limits, behind_switch);
    }
    return f;
}

template Finding<Silent> intake_capacity(Silent&, const Case<Silent>&);
template Finding<Recording> intake_capacity(Recording&, const Case<Recording>&);

}  // namespace toft::rules
