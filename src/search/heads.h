#pragma once
// The heads of a run judged by themselves, once for all routes: which fall, which nearly do, and
// the live ones by price and in ladders of rising rating.

#include "search/judge.h"

#include <vector>

namespace toft::search {

/// What is left of a part's judgement once its findings have been looked at.
struct PartFinding {
    Verdicts verdicts{};  ///< a failure that may yet be met reads not_known
    double headroom = 1;
    const rules::RuleInfo* governed_by = nullptr;
    std::size_t first_hard = rules::rule_count;
    std::size_t failures = 0;
    price::Price<Silent> price;  ///< of the scheme it was judged with, and its remedies
    Span span;                   ///< of its own part of the price
};

PartFinding finding_of(const Judge& judge, const price::Book& book, const study::RunScheme& scheme,
                       const PartJudgement& part);

/// The price of a scheme from that of its route with another head and of its head on another route.
price::Price<Silent> together(const price::Price<Silent>& run, const price::Price<Silent>& head,
                              const price::Book& book);

/// Span of a route's part of the price, from its finding.
Span span_of_route(const Judge& judge, const price::Book& book, const study::RunScheme& scheme,
                   const PartFinding& finding);

struct JudgedHead {
    Head head;
    PartFinding finding;          ///< of one that fell only which rule, and how many
    rules::Finding<Silent> miss;  ///< of the rule it fell to
    std::size_t ladder = 0;       ///< heads of one make and place that differ in rating only …
    std::size_t rung = 0;         ///< … and its place there, by rising rating
};

/// A route with what was found of it without a head.
struct JudgedRoute {
    const Route* route = nullptr;
    PartFinding finding;
    double dependability = 0;
    double lost = 0;  ///< worth of the energy lost over the years
};

class HeadList {
public:
    HeadList() = default;
    HeadList(HeadList&&) = default;
    HeadList& operator=(HeadList&&) = default;
    /// Judges `heads` on any of `routes`: what they are judged by does not see the route.
    HeadList(const Judge& judge, const price::Book& book, const std::vector<Head>& heads,
             const std::vector<Route>& routes);

    struct Fallen {
        long count = 0;
        const char* says = "";
    };

    const std::vector<JudgedHead>& all() const { return heads_; }
    const std::vector<const JudgedHead*>& live() const { return live_; }  ///< the cheapest first
    /// Those that fail one rule only, the nearest first.
    const std::vector<const JudgedHead*>& near_misses() const { return near_misses_; }
    const std::array<Fallen, rules::rule_count>& fallen() const { return fallen_; }
    std::size_t ladders() const { return ladders_; }

private:
    void sort();
    void build_ladders();

    std::vector<JudgedHead> heads_;
    std::vector<const JudgedHead*> live_;
    std::vector<const JudgedHead*> near_misses_;
    std::array<Fallen, rules::rule_count> fallen_{};
    std::size_t ladders_ = 0;
};

/// The rules on route and head together by which a scheme may fall.
std::vector<std::size_t> rules_on_both();

/// The first rule on route and head together that moves with the rating of the device.
std::size_t first_that_moves();

}  // namespace toft::search
