#include "rules/breaking_capacity.h"

#include "finding/judge.h"

namespace toft::rules {

const RuleInfo breaking_capacity_rule{
    .name = "breaking-capacity",
    .title = "the device can break the largest fault current at the origin",
    .clause = "434.5.1, 536.4.201",
    .unit = "A",
    .sees = Sees::head,
    .reads = "the fault current at the origin, Ze, the line-neutral loop, the operator's fuse",
};

namespace {

/// A domestic board of breakers behind an operator's fuse of the right kind is taken as rated for
/// the declared fault current, whatever its breakers say. An old board of fuse carriers is not.
template <class L>
bool backed(const Case<L>& c) {
    const tables::Kind kind = c.scheme.device->kind;
    const bool breakers = kind == tables::Kind::breaker || kind == tables::Kind::rcbo;
    return breakers && c.scheme.fed_from != site::FedFrom::tails && c.setting.house.assembly_backed;
}

}  // namespace

template <class L>
Finding<L> breaking_capacity(L& ledger, const Case<L>& c) {
    const auto own =
        ledger.table({"Icn", "breaking capacity of the device"}, c.scheme.device->breaking);
    if (!backed(c)) return keeps_under(ledger, breaking_capacity_rule, c.setting.supply.pscc, own);
    const auto board =
        ledger.table({"Icc", "conditional rating of a domestic board behind such a fuse"},
                     c.setting.catalogue->limits.assembly_conditional);
    const auto limit =
        ledger.let({"Icn.backed", "what the board with its breaker can take"}, most(own, board));
    Finding<L> f = keeps_under(ledger, breaking_capacity_rule, c.setting.supply.pscc, limit);
    f.says = "backed up by the operator's fuse";
    return f;
}

template Finding<Silent> breaking_capacity(Silent&, const Case<Silent>&);
template Finding<Recording> breaking_capacity(Recording&, const Case<Recording>&);

}  // namespace toft::rules
