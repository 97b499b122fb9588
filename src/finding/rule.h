#pragma once
// What a rule is: a clause that turns figures into a finding. Physics is done before it (study),
// limits are data; a rule compares, and says what its answer depends on.

#include "study/figures.h"

#include <array>
#include <string>
#include <vector>

namespace toft::rules {

enum class Verdict : unsigned char { meets, caution, not_known, fails };

const char* verdict_word(Verdict verdict);

/// Which way a rule moves when one thing about a scheme grows and nothing else changes.
enum class Trend { none, worse, better, either };

const char* trend_word(Trend trend);

/// Which choices of a scheme a rule looks at: what lies in the route and the earthing (the run),
/// what stands at its head (device, place, residual current device), or both.
enum class Sees { run, head, both };

/// What a rule declares of itself. The search prunes and explains by this, never by name.
struct RuleInfo {
    const char* name;
    const char* title;                        ///< what it asks, in a sentence
    const char* clause;                       ///< regulations it stands on
    const char* unit = "";                    ///< of value and limit
    Sees sees = Sees::run;                    ///< choices it looks at
    study::Stage needs = study::Stage::none;  ///< how much must be worked out before it can judge
    bool graded = false;                      ///< its use counts as headroom: a margin worth having
    bool adds = false;                        ///< adds along a path of runs
    bool only_cautions = false;               ///< never fails: asked of the schemes shown alone
    Trend longer = Trend::none;               ///< as the run gets longer
    Trend thicker = Trend::none;              ///< as the cores get thicker
    Trend heavier = Trend::none;              ///< as the load grows
    Trend larger = Trend::none;               ///< as the rating of the device grows
    const char* reads = "";                   ///< facts of the job it depends on
};

/// What a rule is shown.
template <class L>
struct Case {
    const study::Setting<L>& setting;
    const study::RunScheme& scheme;
    const study::Figures<L>& figures;
};

/// Items of the price book that one finding may ask for, besides its first.
inline constexpr std::size_t most_remedies = 7;

/// A rule's judgement of one run.
template <class L>
struct Finding {
    const RuleInfo* rule = nullptr;
    Verdict verdict = Verdict::meets;
    bool limited = false;   ///< there is a value and a limit
    bool at_least = false;  ///< the value must reach the limit rather than keep under it
    double value = 0;
    double limit = 0;
    ValueIn<L, double> use{};  ///< share of the limit; at most 1 when met
    const char* says = "";     ///< why, where the figures alone do not tell
    int circuit = -1;          ///< place of the circuit it is about, in the building's list
    const char* remedy = "";   ///< item of the price book that would put it right
    std::array<const char*, most_remedies>
        remedies{};        ///< further such items; null from the end on
    bool concerns = true;  ///< false: it has nothing to say of this run and is not shown
};

/// Room for every rule's finding on one run, without allocation.
inline constexpr std::size_t most_rules = 32;

}  // namespace toft::rules
