#pragma once
// Tells which pairs of a route and a head are surely set aside, without adding up their prices: the
// live heads in one row of figures, and for each headroom that they leave the price above which
// nothing is looked at.

#include "search/heads.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace toft::search {

/// Surely above the ceiling, surely not, or too near to tell before the price is added up.
enum class Sifted { held_back, let_through, open };

class Sieve {
public:
    Sieve() = default;
    Sieve(const HeadList& heads, const price::Book& book);

    /// What follows is about that route.
    void take_up(const PartFinding& route);

    /// Prices above which nothing is looked at have changed.
    void forget();

    /// Whether the pair with live head `i` costs more than `ceiling` says of the most headroom that
    /// it can have.
    template <class Ceiling>
    Sifted sift(std::size_t i, const Ceiling& ceiling) {
        const Row& row = rows_[i];
        double& limit = ceilings_[row.group];
        if (std::isnan(limit)) limit = ceiling(std::min(headroom_, headrooms_[row.group]));
        const double about = price(row);
        if (about - rounding > limit) return Sifted::held_back;
        return about + rounding < limit ? Sifted::let_through : Sifted::open;
    }

    /// Place of the first live head from `i` on, below `end`, that is not held back; else `end`.
    template <class Ceiling>
    std::size_t next(std::size_t i, std::size_t end, const Ceiling& ceiling) {
        while (i < end && sift(i, ceiling) == Sifted::held_back) ++i;
        return i;
    }

    /// Place of the first live head from which on all are held back, even if they left the route
    /// all the headroom it has itself: heads stand by rising price.
    template <class Ceiling>
    std::size_t first_hopeless(const Ceiling& ceiling) const {
        const double limit = ceiling(headroom_);
        const auto at = std::partition_point(rows_.begin(), rows_.end(), [&](const Row& row) {
            return price(row) - rounding <= limit;
        });
        return static_cast<std::size_t>(at - rows_.begin());
    }

private:
    struct Row {
        double net = 0;         ///< pounds that the head brings with it
        std::size_t group = 0;  ///< of heads that leave the same headroom
    };

    /// Of price and tax, each rounded to the penny; and what is a penny on the way.
    static constexpr double rounding = 0.02;

    /// Pounds with tax that the pair comes to, but for `rounding`.
    double price(const Row& row) const { return (net_ + row.net) * with_tax_; }

    std::vector<Row> rows_;          ///< beside the live heads
    std::vector<double> headrooms_;  ///< by group
    std::vector<double> ceilings_;   ///< by group; not a number where it is not known
    double with_tax_ = 1;
    double net_ = 0;       ///< of the route
    double headroom_ = 1;  ///< of the route
};

}  // namespace toft::search
