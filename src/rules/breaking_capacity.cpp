#include "rules/breaking_capacity.h"

#include "finding/judge.h"

namespace toft::rules {

const RuleInfo breaking_capacity_rule{
    .name = "breaking-capacity",
    .title = "the device can break the largest fault current at the origin",
    .clause = "434.5.1, 536.4.201",
    .unit = "A",
    .sees = Sees::head,
    .reads =
        "the fault current at the origin, Ze, the line-neutral loop, the operator's fuse, the "
        "house's board",
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

/// What the survey read off the house's board, where that is less than may flow there: an existing
/// defect. A way of that board cannot be used; any other feed leaves it to be put right.
template <class L>
Finding<L> too_weak_a_board(L& ledger, const Case<L>& c) {
    const auto board = ledger.stated({"Icn.house", "breaking capacity of the house's board"},
                                     c.setting.house.breaking_least, "survey");
    Finding<L> f = keeps_under(ledger, breaking_capacity_rule, c.setting.supply.pscc, board);
    f.says =
        "the house's board cannot break the fault current there: put a board that can in its "
        "place first";
    if (c.scheme.fed_from != site::FedFrom::spare_way) f.verdict = Verdict::caution;
    f.remedy = "new board";
    return f;
}

template <class L>
bool board_too_weak(const Case<L>& c) {
    const study::HouseSetting<L>& house = c.setting.house;
    return house.breaking_known && !house.assembly_backed &&
           !within(plain(c.setting.supply.pscc).number(), house.breaking_least.number());
}

template <class L>
Finding<L> of_the_device(L& ledger, const Case<L>& c) {
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

}  // namespace

template <class L>
Finding<L> breaking_capacity(L& ledger, const Case<L>& c) {
    const Finding<L> device = of_the_device(ledger, c);
    if (device.verdict == Verdict::fails || !board_too_weak(c)) return device;
    return too_weak_a_board(ledger, c);
}

template Finding<Silent> breaking_capacity(Silent&, const Case<Silent>&);
template Finding<Recording> breaking_capacity(Recording&, const Case<Recording>&);

}  // namespace toft::rules
