#pragma once
// One scheme worked out with every line written down.

#include "answer/answer.h"
#include "earthing/touch_figures.h"
#include "price/bill.h"
#include "rules/rulebook.h"
#include "study/selectivity.h"

#include <memory>
#include <string>
#include <vector>

namespace toft::answer {

/// A figure with its working.
struct Working {
    std::string name;  ///< what was asked for: a rule or a figure
    std::string title;
    double value = 0;
    std::string unit;
    std::vector<Line> lines;  ///< in the order they were worked out
};

/// A scheme's recording: settings, figures, findings, price. It points into job and catalogue.
class Recorded {
public:
    Recorded(const Question& question, const study::RunScheme& scheme);

    const study::Setting<Recording>& setting() const { return setting_; }
    const study::Figures<Recording>& figures() const { return figures_; }
    const std::vector<rules::Finding<Recording>>& findings() const { return findings_; }

    const study::TouchFigures<Recording>& touch() const { return touch_; }

    /// Devices in series, from the operator's fuse outwards.
    const std::vector<study::SelectivePair<Recording>>& pairs() const { return pairs_; }

    /// What pair `index` protects; null for the first, the operator's fuse over the head of the
    /// run.
    const study::FarDevice* protected_by(std::size_t index) const {
        return index == 0 ? nullptr : &far_[index - 1];
    }

    /// Lines behind a finding's use; empty where it has none.
    std::vector<Line> lines_of(const rules::Finding<Recording>& finding) const;

    /// Names that `working` knows: rules with a figure, then figures.
    std::vector<std::string> names() const;

    /// The working of a rule or figure by name; none when there is no such name.
    std::optional<Working> working(const std::string& asked) const;

    /// What the price is the sum of.
    const price::Bill& bill() const { return bill_; }

    /// The price by the low and by the high end of the book.
    const price::Price<Silent>& price_low() const { return price_low_; }
    const price::Price<Silent>& price_high() const { return price_high_; }

    /// Every citation on which any figure rests, each once.
    std::vector<const Citation*> citations() const;

private:
    struct Figure {
        std::string name;
        std::string title;
        double value = 0;
        std::string unit;
        Expression expression;
    };

    template <class T>
    void figure(const char* name, const char* title, const Traced<T>& traced, double scale,
                const char* unit);
    void figures_of_run();
    void figures_of_demand(const study::RunScheme& scheme);
    void figures_of_touch(const study::RunScheme& scheme);
    void figures_of_circuits();
    void figures_of_pairs(const study::RunScheme& scheme);
    void figures_of_loss(const price::Book& book);
    void figures_of_price(const price::Price<Recording>& price);
    void price(const Question& question, const study::RunScheme& scheme);

    Recording ledger_;
    study::Setting<Recording> setting_;
    study::Figures<Recording> figures_;
    study::TouchFigures<Recording> touch_;
    std::vector<rules::Finding<Recording>> findings_;
    std::vector<study::FarDevice> far_;
    std::vector<study::SelectivePair<Recording>> pairs_;
    std::vector<Figure> named_;
    price::Bill bill_;
    price::Price<Silent> price_low_, price_high_;
};

}  // namespace toft::answer
