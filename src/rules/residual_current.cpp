#include "rules/residual_current.h"

#include "finding/judge.h"
#include "guard/caution.h"

namespace toft::rules {

const RuleInfo residual_current_rule{
    .name = "residual-current",
    .title = "circuits have the residual current devices they need, and the right one acts first",
    .clause = "411.3.3, 411.5.2, 531.3.2, 531.3.3, 536.4.1.4",
    .sees = Sees::head,
    .reads =
        "the RCD in front of the house's board, its type and delay; what each circuit feeds, "
        "whether a drive feeds it, its leakage",
};

namespace {

/// Every circuit of the outbuilding stands behind 30 mA in all schemes; what differs is what stands
/// in front of the run.
constexpr const char* board = "every circuit of the building stands behind a 30 mA RCD of its own";

}  // namespace

template <class L>
Finding<L> residual_current(L& ledger, const Case<L>& c) {
    const tables::Limits& limits = c.setting.catalogue->limits;
    const guard::View view = guard::view_of(c.setting, c.scheme);
    const guard::Chain chain = guard::chain_of(view, c.scheme, c.setting.house.behind_rcd);
    Finding<L> f = plain_finding<L>(residual_current_rule, Verdict::meets, board);
    if (const auto residual = study::residual_at_head(c.scheme)) {
        const auto own = ledger.table({"IdN.board", "residual current rating at the building"},
                                      limits.residual_socket);
        const auto head = ledger.stated({"IdN", "residual current rating at the head of the run"},
                                        residual->sensitivity, "scheme");
        const auto ratio = ledger.let({"ratio", "head over building"}, head / own);
        f = reaches(ledger, residual_current_rule, ratio,
                    ledger.table({"ratio.min", "ratio that lets the building's act first"},
                                 limits.residual_ratio));
        f.says = board;
        if (f.verdict == Verdict::fails && !c.scheme.device->residual) return f;
    }
    const guard::Cautions cautions = guard::cautions_of(view, chain);
    if (cautions.count == 0) return f;
    f.verdict = Verdict::caution;
    f.says = cautions.says[0];
    return f;
}

template Finding<Silent> residual_current(Silent&, const Case<Silent>&);
template Finding<Recording> residual_current(Recording&, const Case<Recording>&);

}  // namespace toft::rules
