#pragma once
// Offers for a part of the tree: all of it can be built for `price`, if what arrives is at most
// `most` in each of K resources. Of two offers one beats the other if it comes first (by price, at
// equal price by the order of the answer) and bears at least as much.

#include "spread/problem.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <utility>
#include <vector>

namespace toft::spread {

template <std::size_t K>
struct Offer {
    double price = 0;
    std::array<double, K> most{};
    std::uint32_t from = 0;  ///< offer behind the branch, or of the first part joined
    std::uint32_t pick = 0;  ///< choice of the branch, or offer of the second part
};

template <std::size_t K>
bool bears(const Offer<K>& a, const Offer<K>& b) {
    for (std::size_t i = 0; i < K; ++i) {
        if (a.most[i] < b.most[i]) return false;
    }
    return true;
}

/// Those seen so far that bear most; asked whether one of them bears a newcomer.
template <std::size_t K>
class Crest {
public:
    /// False if one seen before bears as much; otherwise takes it in.
    bool take(const Offer<K>& offer) {
        for (std::size_t block = 0; block * width < seen_.size(); ++block) {
            if (!bears(tops_[block], offer)) continue;
            const std::size_t end = std::min(seen_.size(), (block + 1) * width);
            for (std::size_t i = block * width; i < end; ++i) {
                if (bears(seen_[i], offer)) return false;
            }
        }
        if (seen_.size() % width == 0) tops_.push_back(offer);
        for (std::size_t i = 0; i < K; ++i) {
            tops_.back().most[i] = std::max(tops_.back().most[i], offer.most[i]);
        }
        seen_.push_back(offer);
        return true;
    }

private:
    static constexpr std::size_t width = 16;
    std::vector<Offer<K>> seen_;
    std::vector<Offer<K>> tops_;  ///< the most of each resource in a block
};

template <>
class Crest<1> {
public:
    bool take(const Offer<1>& offer) {
        if (offer.most[0] <= most_) return false;
        most_ = offer.most[0];
        return true;
    }

private:
    double most_ = -no_limit;
};

/// A staircase: the first resource rises, the second falls.
template <>
class Crest<2> {
public:
    bool take(const Offer<2>& offer) {
        const auto [x, y] = offer.most;
        const auto at = std::lower_bound(stairs_.begin(), stairs_.end(), x,
                                         [](const Stair& s, double limit) { return s.x < limit; });
        if (at != stairs_.end() && at->y >= y) return false;
        auto first = at;
        while (first != stairs_.begin() && std::prev(first)->y <= y) --first;
        const auto last = at != stairs_.end() && at->x == x ? std::next(at) : at;
        if (first == last) {
            stairs_.insert(at, {x, y});
        } else {
            *first = {x, y};
            stairs_.erase(std::next(first), last);
        }
        return true;
    }

private:
    struct Stair {
        double x;
        double y;
    };
    std::vector<Stair> stairs_;
};

/// Sorts by price, then by `before`, and strikes offers that are beaten.
template <std::size_t K, class Before>
void thin(std::vector<Offer<K>>& offers, const Before& before) {
    std::sort(offers.begin(), offers.end(), [&](const Offer<K>& a, const Offer<K>& b) {
        return a.price < b.price || (a.price == b.price && before(a, b));
    });
    Crest<K> crest;
    std::size_t kept = 0;
    for (const Offer<K>& offer : offers) {
        if (crest.take(offer)) offers[kept++] = offer;
    }
    offers.resize(kept);
}

}  // namespace toft::spread
