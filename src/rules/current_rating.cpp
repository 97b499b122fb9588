#include "rules/current_rating.h"

#include "finding/judge.h"

namespace toft::rules {

using study::Stage;

const RuleInfo current_rating_rule{
    .name = "current-rating",
    .title = "the cable, on its worst leg, carries at least the rating of its device",
    .clause = "433.1.1 (ii), Appendix 4 item 5",
    .unit = "A",
    .sees = Sees::both,
    .needs = Stage::rating,
    .graded = true,
    .longer = Trend::either,
    .thicker = Trend::better,
    .heavier = Trend::either,  // allowances shift the share of third harmonics
    .larger = Trend::worse,
    .reads =
        "the legs' methods, temperatures, grouping, soil and depth, the load's third harmonics",
};

template <class L>
Finding<L> current_rating(L& ledger, const Case<L>& c) {
    const auto in =
        ledger.stated({"In", "rating of the device"}, c.scheme.device->rating, "scheme");
    const auto& share = c.setting.catalogue->limits.overload_i2;
    // With In <= Iz fuses to BS 88 and breakers also keep I2 <= 1.45 Iz (433.1.201); for buried
    // cable the 0.9 within Iz is what makes that true. A rewirable fuse does not (433.1.202).
    if (c.scheme.device->i2.value <= share.value) {
        return keeps_under(ledger, current_rating_rule, in, c.figures.iz);
    }
    const auto allowed =
        ledger.table({"I2.max", "operating current over rating of the cable"}, share);
    const auto own = ledger.table({"I2", "current that operates the device, over its rating"},
                                  c.scheme.device->i2);
    return keeps_under(ledger, current_rating_rule, in,
                       ledger.let({"In.max", "largest device for the cable", 0, "", "433.1.202"},
                                  c.figures.iz * (allowed / own)));
}

template Finding<Silent> current_rating(Silent&, const Case<Silent>&);
template Finding<Recording> current_rating(Recording&, const Case<Recording>&);

}  // namespace toft::rules
