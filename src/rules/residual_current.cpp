#include "rules/residual_current.h"

#include "guard/chain.h"
#include "guard/leakage.h"
#include "rules/judge.h"

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

using guard::Budget;
using guard::Chain;
using guard::Post;
using guard::Sight;
using guard::View;

/// Every circuit of the outbuilding stands behind 30 mA in all schemes; what differs is what stands
/// in front of the run.
constexpr const char* board = "every circuit of the building stands behind a 30 mA RCD of its own";

constexpr const char* blinded =
    "the RCD of the house's board is of a type that what is fed out there can blind: smooth d.c. "
    "would stop it from seeing faults in the house too";
constexpr const char* sight_not_known =
    "nobody read the type of the RCD of the house's board: what is fed out there may blind it, for "
    "faults in the house too";
constexpr const char* sight_by_detection =
    "the RCD of the house's board is blinded unless the charging point detects 6 mA of smooth d.c. "
    "itself and opens";
constexpr const char* hangs_on_the_house =
    "the run would hang on the house's RCD: a fault out there takes the house's circuits with it, "
    "and either device may act first";
constexpr const char* freezer_hangs =
    "the run would hang on the house's RCD: a fault anywhere behind it takes the freezer and the "
    "house's circuits with it, and nobody may notice";
constexpr const char* rcbo_takes_all =
    "a fault in the building may trip its own RCD or the RCBO at the house, or both: then "
    "everything out there goes dark and someone walks to the house";
constexpr const char* rcbo_takes_freezer =
    "a fault in the building may trip its own RCD or the RCBO at the house, or both: then the "
    "freezer goes dark with everything else, and nobody may notice";
constexpr const char* leaks_at_head =
    "what the circuits leak in ordinary use may come to more than 30 % of the rating of the RCD in "
    "front of them: it may open without a fault";
constexpr const char* leaks_in_circuit =
    "a circuit may leak more in ordinary use than 30 % of its 30 mA: it may open without a fault";

/// The heaviest thing to be said of what the building does to the house's RCD; empty for none.
const char* said_of_sight(const View& view, const Chain& chain) {
    const guard::Rcd* house = chain.at(Post::house);
    if (!house || guard::upstream_type(view) == site::RcdType::a) {
        return house && house->type == site::RcdType::ac ? blinded : "";
    }
    switch (guard::sight_of(view, house->type)) {
        case Sight::blinded:
            return blinded;
        case Sight::not_known:
            return sight_not_known;
        case Sight::only_with_detection:
            return sight_by_detection;
        case Sight::sees:
            break;
    }
    return "";
}

const char* said_of_order(const View& view, const Chain& chain) {
    const guard::Rcd& own = chain.rcd[chain.count - 1];
    const bool freezer = guard::has_kind(view, site::CircuitKind::freezer);
    const guard::Rcd* house = chain.at(Post::house);
    if (house && !guard::selective(view, *house, own)) {
        return freezer ? freezer_hangs : hangs_on_the_house;
    }
    const guard::Rcd* head = chain.at(Post::head);
    if (head && !guard::selective(view, *head, own)) {
        return freezer ? rcbo_takes_freezer : rcbo_takes_all;
    }
    return "";
}

const char* said_of_leakage(const View& view, const Chain& chain) {
    const guard::Leakage sum = guard::leakage_of_all(view);
    for (std::size_t i = 0; i + 1 < chain.count; ++i) {
        if (guard::budget_of(view, sum, chain.rcd[i].sensitivity) != Budget::kept) {
            return leaks_at_head;
        }
    }
    return guard::worst_circuit(view) != Budget::kept ? leaks_in_circuit : "";
}

/// What asks for caution, the heaviest first; empty for nothing.
const char* caution_of(const View& view, const Chain& chain) {
    for (const auto& said : {said_of_sight, said_of_order, said_of_leakage}) {
        const char* words = said(view, chain);
        if (*words) return words;
    }
    return "";
}

}  // namespace

template <class L>
Finding<L> residual_current(L& ledger, const Case<L>& c) {
    const tables::Limits& limits = c.setting.catalogue->limits;
    const View view = guard::view_of(c.setting, c.scheme);
    const Chain chain = guard::chain_of(view, c.scheme, c.setting.house.behind_rcd);
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
    const char* caution = caution_of(view, chain);
    if (!*caution) return f;
    f.verdict = Verdict::caution;
    f.says = caution;
    return f;
}

template Finding<Silent> residual_current(Silent&, const Case<Silent>&);
template Finding<Recording> residual_current(Recording&, const Case<Recording>&);

}  // namespace toft::rules
