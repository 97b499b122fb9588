#include "rules/feed_point.h"

#include "finding/judge.h"

namespace toft::rules {

const RuleInfo feed_point_rule{
    .name = "feed-point",
    .title =
        "the place the run is fed from can take it: a way is free, the device is within what the "
        "board and the operator's fuse allow",
    .clause = "132.16, 314, 433",
    .unit = "A",
    .sees = Sees::head,
    .larger = Trend::worse,
    .reads = "the house's board and the operator's fuse",
};

template <class L>
Finding<L> feed_point(L& ledger, const Case<L>& c) {
    const study::HouseSetting<L>& house = c.setting.house;
    const bool way = c.scheme.fed_from == site::FedFrom::spare_way;
    const Amperes most_allowed =
        way ? least(house.max_device_least, house.service_fuse_least) : house.service_fuse_least;
    const auto in =
        ledger.stated({"In", "rating of the device"}, c.scheme.device->rating, "scheme");
    const auto limit = ledger.stated({"In.max", "largest device there"}, most_allowed,
                                     "the board and the operator's fuse");
    Finding<L> f = keeps_under(ledger, feed_point_rule, in, limit);
    if (f.verdict == Verdict::fails) {
        f.says = house.at_house
                     ? "larger than the board or the operator's fuse allows"
                     : "larger than the device at the head of the run that feeds this board";
    }
    if (way && house.spare_ways < c.setting.phases) {
        f.verdict = Verdict::fails;
        f.says = !house.at_house ? "the board it is fed from has no way free"
                 : c.setting.phases == 1
                     ? "no way of the house's board is free"
                     : "three ways of the house's board side by side are not free";
    }
    const tables::Limits& limits = c.setting.catalogue->limits;
    if (!way && f.verdict == Verdict::meets && house.tails_known &&
        house.tails_most > limits.tails_longest.value) {
        f.verdict = Verdict::caution;
        f.says =
            "the tails are longer than the operator allows without a switch-fuse of their own near "
            "the meter: fit one there, and feed the run from it";
    }
    return f;
}

template Finding<Silent> feed_point(Silent&, const Case<Silent>&);
template Finding<Recording> feed_point(Recording&, const Case<Recording>&);

}  // namespace toft::rules
