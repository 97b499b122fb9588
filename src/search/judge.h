#pragma once
// Judging runs, heads and their pairs for one job: at the worse end of every open fact, and at
// kinder ends where that fails.

#include "search/search.h"

namespace toft::search {

/// Figures of one route at the kinder ends, kept from head to head.
using KinderFigures = std::vector<study::Figures<Silent>>;

/// What follows is another route.
void forget(KinderFigures& kept);

/// Findings of the rules that look at one part of a scheme, each part judged once.
struct PartJudgement {
    std::array<rules::Finding<Silent>, rules::rule_count> findings;
    study::Figures<Silent> figures;              ///< as far as no head is needed
    std::size_t first_hard = rules::rule_count;  ///< first rule that fails at every end
    std::size_t failures = 0;                    ///< rules that fail at the worse end
    KinderFigures kinder;                        ///< room for what is looked at at kinder ends
};

/// The least use of each rule that a scheme which fails it alone has had so far.
using Nearest = std::array<double, rules::rule_count>;

/// Whether a scheme that falls to that finding comes nearer to meeting its rule.
bool comes_nearer(const rules::Finding<Silent>& finding, double nearest);

class Judge {
public:
    Judge(const tables::Catalogue& catalogue, const site::Job& job, study::RunAt at,
          const study::Corner& corner);

    const study::Setting<Silent>& setting() const { return worse_; }
    const study::Corner& corner() const { return corner_; }

    /// The setting with every open fact at its better end; null when none is open.
    const study::Setting<Silent>* better() const {
        return kinder_.empty() ? nullptr : &kinder_.front();
    }

    /// Judges the rules that look only at `sees` on `scheme`.
    void judge_part(rules::Sees sees, const study::RunScheme& scheme, PartJudgement& out) const;

    /// … no further than its fate is open: once it has fallen, only while it may fail no other rule
    /// and come nearer to being met than `nearest`; null: however far it is from that.
    void judge_fate(rules::Sees sees, const study::RunScheme& scheme, const Nearest* nearest,
                    PartJudgement& out) const;

    /// Rule `index` on `scheme`, with figures already worked out as far as they go.
    rules::Finding<Silent> judge(std::size_t index, const study::RunScheme& scheme,
                                 study::Figures<Silent>& figures) const;

    /// Whether rule `index`, which fails at the worse end, is met at some kinder end. `kept` holds
    /// figures of the same route from earlier calls, or is empty; figures that hang on the head are
    /// worked out anew.
    bool may_meet(std::size_t index, const study::RunScheme& scheme, KinderFigures& kept) const;

    /// Facts on which `scheme` hangs, given the rules that are not known.
    std::vector<std::string> hangs_on(const study::RunScheme& scheme,
                                      const Verdicts& verdicts) const;

private:
    template <class Enough>
    void judge_part(rules::Sees sees, const study::RunScheme& scheme, PartJudgement& out,
                    const Enough& enough) const;
    bool breaks(const study::RunScheme& scheme, const std::vector<std::size_t>& unsure,
                const std::string& pointer) const;

    const tables::Catalogue& catalogue_;
    const site::Job& job_;
    study::RunAt run_;
    study::Corner corner_;
    study::Setting<Silent> worse_;
    std::vector<study::Setting<Silent>> kinder_;
};

}  // namespace toft::search
