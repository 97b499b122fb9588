#include "rules/current_rating.h"

#include "rules/judge.h"

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
    .thicker = Trend::better,
    .larger = Trend::worse,
    .reads = "the legs' methods, temperatures, grouping, soil and depth",
};

template <class L>
Finding<L> current_rating(L& ledger, const Case<L>& c) {
    // With In <= Iz fuses to BS 88 and breakers to BS EN 60898 also keep I2 <= 1.45 Iz (433.1.201);
    // for buried cable the 0.9 within Iz is what makes that true.
    return keeps_under(
        ledger, current_rating_rule,
        ledger.stated({"In", "rating of the device"}, c.scheme.device->rating, "scheme"),
        c.figures.iz);
}

template Finding<Silent> current_rating(Silent&, const Case<Silent>&);
template Finding<Recording> current_rating(Recording&, const Case<Recording>&);

}  // namespace toft::rules
