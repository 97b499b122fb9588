#include "rules/hidden_cable.h"

#include "finding/judge.h"

namespace toft::rules {

const RuleInfo hidden_cable_rule{
    .name = "hidden-cable",
    .title =
        "a cable without an earthed covering, hidden less than 50 mm deep in a wall, stands behind "
        "a 30 mA RCD",
    .clause = "522.6.202, 522.6.204",
    .unit = "A",
    .sees = Sees::both,
    .reads = "whether a leg is hidden in a wall",
};

namespace {

template <class L>
bool hides_one(const Case<L>& c) {
    for (const auto& leg : c.setting.legs) {
        if (leg.concealed && !c.scheme.stretch[leg.stretch].armoured()) return true;
    }
    return false;
}

}  // namespace

template <class L>
Finding<L> hidden_cable(L& ledger, const Case<L>& c) {
    if (!hides_one(c)) {
        return plain_finding<L>(hidden_cable_rule, Verdict::meets,
                                "no cable without armour is hidden in a wall");
    }
    const auto residual = study::residual_at_head(c.scheme);
    if (!residual) {
        return plain_finding<L>(hidden_cable_rule, Verdict::fails,
                                "a nail through the hidden cable must trip a 30 mA RCD, and none "
                                "stands in front of the "
                                "run: feed it through an RCBO, or use armoured cable there");
    }
    return keeps_under(
        ledger, hidden_cable_rule,
        ledger.stated({"IdN", "residual current rating at the head of the run"},
                      residual->sensitivity, "scheme"),
        ledger.table({"IdN.max", "largest that protects people from a nail in the wall"},
                     c.setting.catalogue->limits.residual_socket));
}

template Finding<Silent> hidden_cable(Silent&, const Case<Silent>&);
template Finding<Recording> hidden_cable(Recording&, const Case<Recording>&);

}  // namespace toft::rules
