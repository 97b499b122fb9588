#pragma once
// Sorting that is compiled once: of each kind of element only its comparison and its moves are.

#include <cstddef>
#include <utility>
#include <vector>

namespace toft {

/// Whether element `a` of what `all` points at comes before element `b`.
using Before = bool (*)(const void* all, std::size_t a, std::size_t b);

/// The places of `count` elements in order; equal ones stay as they were.
std::vector<std::size_t> places_in_order(std::size_t count, const void* all, Before before);

/// Sorts; equal elements stay as they were. `before` is a strict weak order of two elements.
template <class T, class Less>
void put_in_order(std::vector<T>& all, const Less& before) {
    struct Asked {
        const std::vector<T>& all;
        const Less& before;
    };
    const Asked asked{all, before};
    const auto places =
        places_in_order(all.size(), &asked, [](const void* of, std::size_t a, std::size_t b) {
            const Asked& these = *static_cast<const Asked*>(of);
            return these.before(these.all[a], these.all[b]);
        });
    std::vector<T> sorted;
    sorted.reserve(all.size());
    for (const std::size_t place : places) sorted.push_back(std::move(all[place]));
    all = std::move(sorted);
}

}  // namespace toft
