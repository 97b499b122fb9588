#include "trade/armour_sweep.h"

#include "base/text.h"
#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/judging.h"

#include <fmt/format.h>

namespace toft::trade {

namespace {

using rules::Verdict;
using support::measured;

constexpr double loops[] = {smallest_ze, 0.1, 0.15, 0.2, 0.25, 0.3, largest_ze};
constexpr const char* asked[] = {"disconnection", "fault-heat"};

site::Job job_with(double loop_ohm, double length_m) {
    site::Leg leg = support::plain_leg(site::LegMethod::clipped, length_m);
    leg.ambient = measured(celsius(30));
    site::Job job = support::job_with_legs({leg});
    job.intake.ze = measured(ohms(loop_ohm));
    job.intake.line_neutral_loop = measured(ohms(loop_ohm));
    return job;
}

/// The first of the two rules that fails at some loop; empty when none does.
std::string fails_at(const study::RunScheme& scheme, double length_m) {
    for (const char* rule : asked) {
        for (double loop : loops) {
            const auto found = support::finding_of(rule, job_with(loop, length_m), scheme);
            if (found.verdict == Verdict::fails) return rule;
        }
    }
    return "";
}

std::string cell(const Reach& reach) {
    std::string text = fmt::format("{}", reach.metres);
    if (!reach.stopped_by.empty()) text += reach.stopped_by == "disconnection" ? " c" : " h";
    return reach.carries ? text : "(" + text + ")";
}

constexpr const char* head =
    R"(# How far armour serves as the earth of a run

Two-core armoured XLPE cable, its steel armour the only protective conductor, on a TN supply
without metalwork in the building. The figure is the longest run in metres, up to 50, at which an
earth fault at the far end still clears within 5 s ([disconnection](methods/disconnection.md))
*and* cores and armour survive it ([fault-heat](methods/fault-heat.md)), whatever the external loop
from 0.05 to 0.35 Ω.

- `c`: one metre more and the device does not clear in time.
- `h`: one metre more and fault-heat fails. On long runs that is because cores and armour, warmed by
  the fault itself, no longer let enough current through to operate the device; at 0 m, because of
  the heat near the house.
- (brackets): the cable, clipped alone at 30 °C, is too small to stand behind that device anyway.

)";

constexpr const char* foot =
    R"(
**Reading it.** Where the cable may stand behind its device, armour is enough for every household
fuse and every B breaker to 40 A up to 20 m, and up to 50 m for fuses to 20 A and B breakers to
25 A. It gives out early in three cases:

- *C breakers* ask ten times their rating, twice what B breakers ask: a loop that thin armour cannot
  give. C63 asks for 0.347 Ω in all, less than the declared 0.35 Ω outside.
- *B and C breakers of 50 and 63 A* have no energy class in the tables. On a stiff supply the whole
  0.1 s is then counted, and cables up to 10 mm² do not stand that even at the house's end.
- *Large fuses on small cores*: a 45 or 63 A fuse needs 220 or 320 A to act in 5 s.

Take a fuse or a B breaker, a thicker cable, three cores, or a delayed RCD at the head.

**Not in it.** Voltage drop, load, grouping, ground; bonding, for which no two-core armour up to
70 mm² is enough ([bonding-size](methods/bonding-size.md)). Breakers are those of 6 kA.

Written by `toft_test_trade`, which fails when this page is not what it would write.
`TOFT_WRITE_PAGES=1 toft_test_trade --gtest_filter='ArmourTable.*'` writes it anew.
)";

}  // namespace

const std::vector<double>& sections() {
    static const std::vector<double> list{2.5, 4, 6, 10, 16, 25};
    return list;
}

const std::vector<const tables::Device*>& devices() {
    static const std::vector<const tables::Device*> list = [] {
        std::vector<const tables::Device*> found;
        for (double a : {16.0, 20.0, 32.0, 45.0, 63.0}) found.push_back(&support::fuse(a));
        for (const char* curve : {"B", "C"}) {
            for (double a : {16.0, 20.0, 25.0, 32.0, 40.0, 50.0, 63.0}) {
                found.push_back(&support::breaker(curve, a));
            }
        }
        return found;
    }();
    return list;
}

std::string device_word(const tables::Device& device) {
    return (device.fuse() ? "fuse " : device.curve) + significant(device.rating.number(), 6);
}

Reach reach_of(const tables::Device& device, double section_mm2) {
    const auto scheme =
        support::scheme(support::cable(2, section_mm2), study::Protective::armour, device);
    Reach reach;
    const auto rating = support::finding_of("current-rating", job_with(0.2, 10), scheme);
    reach.carries = rating.verdict == Verdict::meets;
    while (reach.metres < longest_m) {
        reach.stopped_by = fails_at(scheme, reach.metres + 1);
        if (!reach.stopped_by.empty()) break;
        ++reach.metres;
    }
    return reach;
}

std::string armour_page() {
    std::string page = std::string(head) + "| device |";
    for (double s : sections()) page += fmt::format(" {} mm² |", significant(s, 4));
    page += "\n|---|";
    for (std::size_t i = 0; i < sections().size(); ++i) page += "---|";
    page += "\n";
    for (const tables::Device* device : devices()) {
        page += fmt::format("| {} A |", device_word(*device));
        for (double s : sections()) page += fmt::format(" {} |", cell(reach_of(*device, s)));
        page += "\n";
    }
    return page + foot;
}

}  // namespace toft::trade
