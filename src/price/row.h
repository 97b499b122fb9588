#pragma once
// A row of the price book: one of its items, or a cable, separate conductor or device by its place
// in the catalogue; and the book's word for each.

#include "price/item.h"
#include "tables/catalogue.h"

#include <string>

namespace toft::price {

struct BookRow {
    enum class Of { item, cable, separate, device };
    Of of = Of::item;
    std::size_t index = 0;  ///< of the item, or of the catalogue's row

    static BookRow item(Item item) { return {Of::item, static_cast<std::size_t>(item)}; }
    static BookRow cable(std::size_t index) { return {Of::cable, index}; }
    static BookRow separate(std::size_t index) { return {Of::separate, index}; }
    static BookRow device(std::size_t index) { return {Of::device, index}; }
};

/// Armoured XLPE copper goes without its family: "cable 2x10", "cable flat twin and earth 2x2.5".
std::string cable_item(const tables::Cable& cable);

/// "separate 10".
std::string separate_item(const tables::Conductor& conductor);

/// The item that prices a device: a fuse by its rating (and its standard, unless it is the
/// household one), a breaker by its type and what it can break.
std::string device_item(const tables::Device& device);

/// Breakers of any sort above this cost "breaker over 40 A extra" more.
bool over_40_a(const tables::Device& device);

std::string row_item(const tables::Catalogue& catalogue, const BookRow& row);

/// m, each, h, …
const char* row_unit(const BookRow& row);

}  // namespace toft::price
