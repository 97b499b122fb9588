#include "rules/residual_current.h"

#include "finding/judge.h"

namespace toft::rules {

const RuleInfo residual_current_rule{
    .name = "residual-current",
    .title = "circuits have the residual current devices they need, and the right one acts first",
    .clause = "411.3.3, 411.5.2, 536.4.1.4",
    .sees = Sees::head,
    .reads = "the RCD in front of the house's board",
};

namespace {

/// Every circuit of the outbuilding stands behind 30 mA in all schemes; what differs is what stands
/// in front of the run.
constexpr const char* board = "every circuit of the building stands behind a 30 mA RCD of its own";

constexpr const char* hangs_on_the_house =
    "the run would hang on the house's RCD: a fault out there takes the house's circuits with it, "
    "and "
    "either device may act first";

}  // namespace

template <class L>
Finding<L> residual_current(L& ledger, const Case<L>& c) {
    const tables::Limits& limits = c.setting.catalogue->limits;
    const bool behind =
        c.scheme.fed_from == site::FedFrom::spare_way && c.setting.house.behind_rcd > amperes(0);
    if (const auto residual = study::residual_at_head(c.scheme)) {
        const auto own = ledger.table({"IdN.board", "residual current rating at the building"},
                                      limits.residual_socket);
        const auto head = ledger.stated({"IdN", "residual current rating at the head of the run"},
                                        residual->sensitivity, "scheme");
        const auto ratio = ledger.let({"ratio", "head over building"}, head / own);
        Finding<L> f =
            reaches(ledger, residual_current_rule, ratio,
                    ledger.table({"ratio.min", "ratio that lets the building's act first"},
                                 limits.residual_ratio));
        f.says = board;
        if (f.verdict == Verdict::fails && c.scheme.device->residual) {
            f.verdict = Verdict::caution;
            f.says =
                "a fault in the building may trip its own RCD or the RCBO at the house, or both: "
                "then everything out there goes dark and someone walks to the house";
        }
        if (f.verdict == Verdict::fails || !behind) return f;
        f.verdict = Verdict::caution;
        f.says = hangs_on_the_house;
        return f;
    }
    if (behind) {
        return plain_finding<L>(residual_current_rule, Verdict::caution, hangs_on_the_house);
    }
    return plain_finding<L>(residual_current_rule, Verdict::meets, board);
}

template Finding<Silent> residual_current(Silent&, const Case<Silent>&);
template Finding<Recording> residual_current(Recording&, const Case<Recording>&);

}  // namespace toft::rules
