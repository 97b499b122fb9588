#include "support/catalogue.h"

#include <cstdio>
#include <cstdlib>

namespace toft::support {

namespace {

[[noreturn]] void give_up(const std::string& says) {
    std::fprintf(stderr, "%s\n", says.c_str());
    std::abort();
}

tables::Catalogue load() {
    auto loaded = tables::load_catalogue(tables::embedded_files());
    if (!loaded) {
        std::string says = "the embedded tables do not load";
        for (const Fault& fault : loaded.error()) says += "\n" + fault.pointer + ": " + fault.says;
        give_up(says);
    }
    return std::move(*loaded);
}

}  // namespace

const tables::Catalogue& catalogue() {
    static const tables::Catalogue loaded = load();
    return loaded;
}

const tables::Cable& cable(tables::Family family, int cores, double section_mm2) {
    for (const tables::Cable& c : catalogue().cables) {
        if (c.family == family && c.cores == cores &&
            c.section == square_millimetres(section_mm2)) {
            return c;
        }
    }
    give_up("no such cable");
}

const tables::Cable& cable(int cores, double section_mm2) {
    return cable(tables::Family::armoured_xlpe_copper, cores, section_mm2);
}

const tables::Make& make(tables::Family family) {
    return catalogue().makes[static_cast<std::size_t>(family)];
}

std::vector<const tables::Conductor*> copper_conductors() {
    std::vector<const tables::Conductor*> found;
    for (const tables::Conductor& c : catalogue().conductors) {
        if (c.metal == tables::Metal::copper) found.push_back(&c);
    }
    return found;
}

const tables::Conductor& conductor(double section_mm2) {
    const auto* found = tables::find_conductor(catalogue(), square_millimetres(section_mm2));
    if (!found) give_up("no such conductor");
    return *found;
}

const tables::Device& fuse(double rating_a) {
    for (const tables::Device& d : catalogue().devices) {
        if (d.standard == "BS 88-3" && d.rating == amperes(rating_a)) return d;
    }
    give_up("no such fuse");
}

const tables::Device& device(const std::string& standard, const std::string& curve,
                             double rating_a) {
    for (const tables::Device& d : catalogue().devices) {
        if (d.standard == standard && d.curve == curve && d.rating == amperes(rating_a)) return d;
    }
    give_up("no such device: " + standard + " " + curve);
}

const tables::Device& breaker(const std::string& curve, double rating_a, double breaking_ka) {
    for (const tables::Device& d : catalogue().devices) {
        if (d.kind == tables::Kind::breaker && d.curve == curve && d.rating == amperes(rating_a) &&
            d.breaking.value == kiloamperes(breaking_ka)) {
            return d;
        }
    }
    give_up("no such breaker");
}

}  // namespace toft::support
