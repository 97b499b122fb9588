#pragma once
// One run of the tree judged by every rule, fed with what the runs before it leave.

#include "loss/energy.h"
#include "price/price.h"
#include "search/evaluate.h"
#include "study/ground_memo.h"

#include <vector>

namespace toft::tree {

/// What judging needs beside the run.
struct Workplace {
    const tables::Catalogue& catalogue;
    const price::Book& book;
    const site::Job& job;
    study::Corner corner;
    study::GroundMemo* memo = nullptr;
    /// Least is asked of the price together with the energy lost over the years.
    bool over_years = false;
};

/// Least that is asked of every run.
struct Floor {
    double headroom = 0;
    double dependability = 0;
};

struct Judged {
    bool sound = false;             ///< fails no rule, and keeps above the floor
    price::Price<Silent> price;     ///< without what is bought once for the whole place
    std::vector<price::Item> once;  ///< bought once for the whole place, in any order, each once
    double lost = 0;                ///< worth of the energy lost over the years, pounds
    double cost = 0;  ///< that is to be least: price with tax, and `lost` if it counts
};

class RunJudge {
public:
    RunJudge(const Workplace& at, std::size_t run, int phases, const study::Incoming* incoming);

    const study::Setting<Silent>& setting() const { return setting_; }

    /// In a trench shared with other runs each run has one cable: two side by side would be
    /// neighbours to all others, with which nobody reckoned.
    bool fits_trenches(const study::RunScheme& scheme) const;

    void bond_beyond(bool needed) { setting_.bonds_beyond = needed; }

    /// Whether every rule that looks at `sees` is met above the floor.
    bool meets(rules::Sees sees, const study::RunScheme& scheme, const Floor& floor,
               study::Figures<Silent>& figures);

    /// What the findings of the last `meets` that was true ask to be put right.
    const std::vector<price::Item>& asked() const { return asked_; }

    /// Every rule and the price.
    Judged judge(const study::RunScheme& scheme, const Floor& floor);

    /// Of the scheme last judged.
    const search::Evaluation& evaluation() const { return evaluation_; }

    /// The price of a scheme of those figures, and what findings ask to be put right. Where the
    /// drop is not worked out nothing is lost.
    Judged priced(const study::RunScheme& scheme, const study::Figures<Silent>& figures,
                  std::vector<price::Item> remedies) const;

private:
    const Workplace& at_;
    study::Setting<Silent> setting_;
    search::Evaluation evaluation_;
    std::vector<price::Item> asked_;
    loss::Year<Silent> year_;
};

/// What the book asks for things bought once, net.
double price_once(const price::Book& book, const std::vector<price::Item>& once);

}  // namespace toft::tree
