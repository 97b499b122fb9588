#pragma once
// What the network operator is asked before the work or told after it, with the figures that say
// so. Page: docs/methods/notice.md.

#include "demand/circuit.h"
#include "tables/rulebook.h"

#include <optional>
#include <string>
#include <vector>

namespace toft::demand {

enum class When { nothing, after, before };

/// "nothing to ask or tell", "tell after", "ask first".
const char* when_words(When when);

struct Notice {
    When when = When::nothing;
    std::string why;  ///< with figures
};

/// What the operator would want to know of a run.
struct Occasion {
    Amperes run;                    ///< demand of the run, of one line
    std::optional<Amperes> house;   ///< largest demand of the house, of one line
    std::string house_known;        ///< how: "measured", "estimated", "declared"
    std::optional<Amperes> fuse;    ///< of the cut-out; none where nobody read it
    std::optional<Amperes> agreed;  ///< demand they have agreed to
    site::Answer looped = site::Answer::unknown;
    std::string load;  ///< "charge point", "heat pump"; empty for neither
    bool generates = false;
    std::optional<Amperes> generation;  ///< of one line; none where it is not stated
    Volts u0{230};
};

/// All there is to ask or tell, what is asked first before what is told after; empty for nothing.
std::vector<Notice> notices(const tables::Limits& limits, const Occasion& occasion);

/// The heaviest of them.
When heaviest(const std::vector<Notice>& notices);

/// The load that the operators' joint process speaks of among the building's circuits that count in
/// that scenario: "charge point", "heat pump", both, or empty.
std::string process_load(const site::Building& building, site::Scenario scenario);

/// Current that all solar and battery circuits of the job that count may send out on one line: 0
/// without any, none where one of them states neither load nor device. Those of a single phase are
/// taken on the same line.
std::optional<Amperes> generation_of(const Place<Silent>& place, const site::Job& job,
                                     site::Scenario scenario);

}  // namespace toft::demand
