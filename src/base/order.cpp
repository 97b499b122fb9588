#include "base/order.h"

#include <algorithm>

namespace toft {

std::vector<std::size_t> places_in_order(std::size_t count, const void* all, Before before) {
    std::vector<std::size_t> places(count);
    for (std::size_t i = 0; i < count; ++i) places[i] = i;
    std::stable_sort(places.begin(), places.end(),
                     [=](std::size_t a, std::size_t b) { return before(all, a, b); });
    return places;
}

}  // namespace toft
