#pragma once
// One scheme worked out to its last figure, over either ledger: with Recording every figure has its
// working, with Silent the same figures come without.

#include "earthing/touch_figures.h"
#include "price/bill.h"
#include "rules/rulebook.h"
#include "study/selectivity.h"

#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

namespace toft::worked {

/// What a scheme is one of: a run of a job, bought by a book. All must outlive what is worked out.
struct Subject {
    const tables::Catalogue& catalogue;
    const price::Book& book;
    const site::Job& job;
    study::RunAt at;
    std::vector<price::Item> bought_before = {};  ///< by runs before it, for the whole place
};

/// Where a figure without working comes from.
struct NoExpression {};

/// A figure by its name.
template <class L>
struct Figure {
    std::string name;
    const char* title;
    double value = 0;
    const char* unit;
    std::conditional_t<L::records, Expression, NoExpression> expression;
};

/// Settings, figures, findings, price. It points into the subject's job and catalogue.
template <class L>
class Worked {
public:
    using Ledger = L;

    /// `setting`: the subject's as things stand, which must outlive it.
    Worked(Subject subject, const study::Setting<Silent>& setting, const study::RunScheme& scheme);

    /// … made ready here.
    Worked(Subject subject, const study::RunScheme& scheme);

    Worked(const Worked&) = delete;
    Worked& operator=(const Worked&) = delete;

    const study::Setting<L>& setting() const {
        if constexpr (L::records) {
            return recorded_;
        } else {
            return setting_;
        }
    }
    const study::Figures<L>& figures() const { return figures_; }
    const std::vector<rules::Finding<L>>& findings() const { return findings_; }
    const study::TouchFigures<L>& touch() const { return touch_; }

    /// Devices in series, from the operator's fuse outwards.
    const std::vector<study::SelectivePair<L>>& pairs() const { return pairs_; }

    /// What pair `index` protects; null for the first, the operator's fuse over the head of the
    /// run.
    const study::FarDevice* protected_by(std::size_t index) const {
        return index == 0 ? nullptr : &far_[index - 1];
    }

    /// Figures that have a name, each once.
    const std::vector<Figure<L>>& named() const { return named_; }

    /// The value of the figure of that name, which must be one of them.
    double value_of(std::string_view name) const;

    /// What the price is the sum of.
    price::Bill bill() const { return price::bill_of(book(), setting_, scheme_, extras_); }

    /// The price by the low and by the high end of the book.
    price::Price<Silent> price_low() const { return price_by(price::at_low(book())); }
    price::Price<Silent> price_high() const { return price_by(price::at_high(book())); }

protected:
    const L& ledger() const { return ledger_; }

private:
    struct Nothing {};

    const price::Book& book() const { return subject_.book; }
    price::Price<Silent> price_by(const price::Book& book) const {
        Silent silent;
        return price::price_of(silent, book, setting_, scheme_, extras_);
    }
    template <class T>
    void figure(std::string name, const char* title, const T& value, double scale,
                const char* unit);
    void work_out();
    void figures_of_run();
    void figures_of_faults();
    void figures_of_demand();
    void figures_of_touch();
    void figures_of_circuits();
    void figures_of_pairs();
    void figures_of_loops();
    void figures_of_loss();
    void figures_of_price();

    Subject subject_;
    L ledger_;
    std::optional<study::Setting<Silent>> own_;
    const study::Setting<Silent>& setting_;
    std::conditional_t<L::records, study::Setting<L>, Nothing> recorded_;
    study::RunScheme scheme_;
    study::Figures<L> figures_;
    study::TouchFigures<L> touch_;
    std::vector<rules::Finding<L>> findings_;
    std::vector<study::FarDevice> far_;
    std::vector<study::SelectivePair<L>> pairs_;
    std::vector<Figure<L>> named_;
    price::Extras extras_;
};

}  // namespace toft::worked
