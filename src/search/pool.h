#pragma once
// Schemes of one certainty that the search has found so far: those that may yet be shown, and what
// others are measured by.

#include "search/front.h"

#include <map>
#include <optional>
#include <vector>

namespace toft::search {

/// Before any scheme of its combination, that price and at most that headroom, whatever its key.
bool surely_before(const Sound& a, double total, double most_headroom, site::Prefer prefer);

/// The price above which that is so; plus or minus infinity where the price does not tell.
double before_above(const Sound& a, double most_headroom, site::Prefer prefer);

/// What a scheme is known to have before it is judged: its price, the most headroom it may have.
struct Hoped {
    double total = 0;
    double headroom = 0;
    double dependability = 0;
};

/// Before any scheme of which that is known, whatever its combination and its key.
bool surely_first(const Sound& a, const Hoped& b, site::Prefer prefer);

/// The price above which that is so, whatever price `b` names.
double first_above(const Sound& a, const Hoped& b, site::Prefer prefer);

/// Less for price and energy over the years together; of equal sums the one that comes first.
bool thriftier(const Sound& a, const Sound& b, site::Prefer prefer);

struct Pool {
    std::vector<Sound> found;
    Front front;
    std::map<Combination, Sound> best;
    std::optional<Sound> first;   ///< kept where only that matters
    std::optional<Sound> thrift;  ///< least price and energy over the years together
    long count = 0;

    /// Takes the scheme in unless others already found are shown rather.
    void add(const Sound& s, site::Prefer prefer);
};

}  // namespace toft::search
