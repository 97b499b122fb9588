#include "support/device_draws.h"

#include "support/catalogue.h"
#include "support/draws.h"

#include <rapidcheck.h>

#include <cmath>
#include <vector>

namespace toft::support {

namespace {

using Wanted = bool (*)(const tables::Device&);

const tables::Device& any_of(Wanted wanted) {
    std::vector<const tables::Device*> found;
    for (const tables::Device& d : catalogue().devices) {
        if (wanted(d)) found.push_back(&d);
    }
    return **rc::gen::elementOf(found);
}

std::vector<const tables::Device*> larger_than(const tables::Device& small) {
    std::vector<const tables::Device*> found;
    for (const tables::Device& d : catalogue().devices) {
        if (d.standard == small.standard && d.curve == small.curve && small.rating < d.rating) {
            found.push_back(&d);
        }
    }
    return found;
}

}  // namespace

double any_current() { return std::pow(10.0, number_between(0, 4.3)); }

const tables::Device& any_device() {
    return any_of([](const tables::Device&) { return true; });
}

const tables::Device& any_smaller_device() {
    return any_of([](const tables::Device& d) { return !larger_than(d).empty(); });
}

const tables::Device& any_larger_than(const tables::Device& small) {
    return **rc::gen::elementOf(larger_than(small));
}

const tables::Device& any_device_of_a_class() {
    return any_of([](const tables::Device& d) { return d.let_through.has_value(); });
}

}  // namespace toft::support
