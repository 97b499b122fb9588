#include "price/row.h"

#include "base/text.h"

#include <fmt/format.h>

namespace toft::price {

std::string cable_item(const tables::Cable& cable) {
    const bool plain = cable.family == tables::Family::armoured_xlpe_copper;
    return fmt::format("cable {}{}{}x{}", plain ? "" : tables::family_word(cable.family),
                       plain ? "" : " ", cable.cores, significant(cable.section.number(), 6));
}

std::string separate_item(const tables::Conductor& conductor) {
    return "separate " + significant(conductor.section.number(), 6);
}

std::string device_item(const tables::Device& device) {
    const std::string rating = significant(device.rating.number(), 6);
    const std::string breaking = significant(device.breaking.value.number() / 1000, 4);
    switch (device.kind) {
        case tables::Kind::fuse:
        case tables::Kind::rewirable:
            if (device.standard == "BS 88-3") return "fuse " + rating;
            return fmt::format("fuse {} {}", device.standard, rating);
        case tables::Kind::breaker:
            return fmt::format("breaker {} {} kA", device.curve, breaking);
        case tables::Kind::rcbo:
            return fmt::format("RCBO {} {} kA", device.curve, breaking);
        case tables::Kind::moulded:
            return fmt::format("moulded breaker {} kA", breaking);
    }
    return "";
}

bool over_40_a(const tables::Device& device) {
    return !device.fuse() && device.rating > amperes(40);
}

std::string row_item(const tables::Catalogue& catalogue, const BookRow& row) {
    switch (row.of) {
        case BookRow::Of::cable:
            return cable_item(catalogue.cables[row.index]);
        case BookRow::Of::separate:
            return separate_item(catalogue.separates[row.index]);
        case BookRow::Of::device:
            return device_item(catalogue.devices[row.index]);
        case BookRow::Of::item:
            break;
    }
    return item_word(static_cast<Item>(row.index));
}

const char* row_unit(const BookRow& row) {
    switch (row.of) {
        case BookRow::Of::cable:
        case BookRow::Of::separate:
            return "m";
        case BookRow::Of::device:
            return "each";
        case BookRow::Of::item:
            break;
    }
    return facts_of(static_cast<Item>(row.index)).unit;
}

}  // namespace toft::price
