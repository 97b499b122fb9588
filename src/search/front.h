#pragma once
// The sound schemes found so far that nothing beats, kept so that a scheme's fate can be told from
// its price and the most headroom it may have, before it is judged.

#include "search/keep.h"

#include <map>
#include <vector>

namespace toft::search {

class Front {
public:
    /// Takes a sound scheme into account.
    void add(const Sound& sound);

    /// Whether a sound scheme is cheaper, at least as dependable, and has at least that headroom:
    /// then any scheme of that price and at most that headroom is beaten.
    bool beats(double total, double most_headroom, double dependability) const;

    /// The price above which `beats` says yes of that headroom and dependability; infinite where
    /// it never does.
    double beaten_above(double most_headroom, double dependability) const;

private:
    struct Step {
        double total;
        double headroom;
    };
    /// By dependability, the greatest first: steps of rising price and rising headroom.
    std::map<double, std::vector<Step>, std::greater<>> levels_;
};

}  // namespace toft::search
