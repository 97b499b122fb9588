#pragma once
// The search: every buildable scheme judged, the sound ones that nothing beats kept, the rest
// counted with their nearest misses. Exact: no scheme is skipped on a guess. What rules declare
// they look at lets one judgement stand for many schemes. Page: docs/methods/search.md.

#include "price/price.h"
#include "search/candidates.h"
#include "search/evaluate.h"
#include "search/span.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace toft::search {

using Verdicts = std::array<rules::Verdict, rules::rule_count>;

/// A scheme that is sound, or would be if open facts turned out well.
struct Sound {
    study::RunScheme scheme;
    double total = 0;  ///< price with tax, pounds
    double headroom = 0;
    double dependability = 0;
    double lost = 0;  ///< worth of the energy it loses over the years, pounds
    long order = 0;   ///< place of its key among all keys of the search
    const rules::RuleInfo* governed_by = nullptr;
    Verdicts verdicts{};  ///< a failure at the worse end reads not_known here
};

/// A scheme worth showing.
struct Contender : Sound {
    std::string key;
    price::Price<Silent> price;
    price::Extras extras;                     ///< that it was priced with
    std::vector<std::string> conditional_on;  ///< pointers of facts its soundness hangs on
    bool conditional() const { return !conditional_on.empty(); }
};

/// A scheme that may come first once more is known; its order is not worked out.
struct Possible : Sound {
    Span span;
};

/// Schemes that fell to one rule first, and the one that came nearest: it fails no other rule.
struct Dropped {
    const rules::RuleInfo* rule = nullptr;
    long count = 0;
    std::optional<study::RunScheme> nearest;
    double nearest_use = 0;
    const char* says = "";  ///< why, in the words of the first that fell
};

struct Result {
    std::vector<Contender> contenders;  ///< unconditional first, each part in order of preference
    std::vector<Dropped> dropped;       ///< in order of the rulebook, those with a count; what
                                        ///< was set aside is counted nowhere else
    long candidates = 0;                ///< buildable schemes: evaluated, set aside or fallen
    long evaluated = 0;  ///< judged one by one, to the end: sound, conditional, or dropped
    long set_aside = 0;  ///< not judged to the end: a sound one is cheaper, as dependable, with at
                         ///< least the headroom they can have, one of their combination is
                         ///< preferred, and one is cheaper over the years
    long fallen = 0;     ///< dropped with their route or head, or beside a smaller device that fell
    long sound = 0;      ///< of the evaluated: meet every rule, kept or not
    long conditional = 0;            ///< of the evaluated: sound only if open facts turn out well
    std::vector<Possible> possible;  ///< where wanted: all that may come first at some corner
    bool all_possible = false;       ///< there are no others
    bool stopped = false;            ///< by who asked: what was found so far

    /// Place of the sound contender that costs least with the energy it loses over the years, which
    /// is always among them; none where nothing is sound, or where only the first was asked for.
    std::optional<std::size_t> least_over_years;

    bool any_sound() const { return !contenders.empty() && !contenders.front().conditional(); }
};

struct Options {
    bool all = false;         ///< show all that are kept, however many
    std::size_t most = 24;    ///< shown otherwise
    bool first_only = false;  ///< only the first contender matters: what cannot be it is set aside
    bool possible = false;    ///< collect all that may come first at other corners; not for those
                              ///< who prefer headroom, which hangs on every fact
    std::size_t most_possible = 50000;  ///< none are given where there are more
    study::Corner corner;
    study::GroundMemo* memo = nullptr;  ///< kept between searches of one job
    std::function<bool()> go_on = {};   ///< asked now and then; once it says no, no more is judged
};

/// Searches run `run_index` of a valid job.
Result search(const tables::Catalogue& catalogue, const price::Book& book, const site::Job& job,
              std::size_t run_index, const Options& options);

}  // namespace toft::search
