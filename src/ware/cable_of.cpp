#include "ware/cable_of.h"

#include "base/text.h"

#include <fmt/format.h>

#include <cstdlib>

namespace toft::ware {

namespace {

constexpr const char* cable_prefix = "cable ";

}  // namespace

const tables::Cable* find_cable(const tables::Catalogue& catalogue, const std::string& family,
                                int cores, double live_mm2) {
    const auto wanted = tables::family_of(family);
    if (!wanted) return nullptr;
    for (const tables::Cable& cable : catalogue.cables) {
        if (cable.family == *wanted && cable.cores == cores &&
            cable.section == square_millimetres(live_mm2)) {
            return &cable;
        }
    }
    return nullptr;
}

const tables::Cable* cable_of_item(const tables::Catalogue& catalogue, const std::string& item) {
    if (item.rfind(cable_prefix, 0) != 0) return nullptr;
    const std::string rest = item.substr(std::string(cable_prefix).size());
    const std::size_t space = rest.rfind(' ');
    const std::string family = space == std::string::npos
                                   ? tables::family_word(tables::Family::armoured_xlpe_copper)
                                   : rest.substr(0, space);
    const std::string size = space == std::string::npos ? rest : rest.substr(space + 1);
    const std::size_t times = size.find('x');
    if (times == std::string::npos) return nullptr;
    return find_cable(catalogue, family, std::atoi(size.c_str()),
                      std::strtod(size.c_str() + times + 1, nullptr));
}

const tables::BuildRow* build_of(const tables::Catalogue& catalogue, const tables::Cable& cable) {
    for (const tables::BuildRow& row : catalogue.ware.builds) {
        if (row.family == cable.family && row.cores == cable.cores &&
            row.section == cable.section) {
            return &row;
        }
    }
    return nullptr;
}

std::string cable_words(const tables::Catalogue& catalogue, const tables::Cable& cable) {
    const tables::Make& make = tables::make_of(catalogue, cable);
    const bool flat = cable.family == tables::Family::flat_twin_and_earth;
    const char* const kind = flat            ? "flat twin and earth cable"
                             : make.armoured ? "armoured cable"
                                             : "round cable without armour";
    const bool xlpe = make.insulation == tables::Insulation::thermosetting_90;
    return fmt::format("{} {}, {}, {}", kind, make.standard, tables::metal_word(make.metal),
                       xlpe ? "XLPE" : "PVC");
}

std::string size_words(const tables::Cable& cable) {
    const bool flat = cable.family == tables::Family::flat_twin_and_earth;
    return fmt::format("{}-core{} {} mm²", cable.cores, flat ? " and earth" : "",
                       significant(cable.section.number(), 4));
}

}  // namespace toft::ware
