#pragma once
// A price book: items with a net price or a quantity each, from text `item,unit,net_gbp,note`. The
// book that comes with the program is invented and only shows the shape.

#include "base/outcome.h"
#include "base/units.h"
#include "price/item.h"
#include "tables/catalogue.h"

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace toft::price {

/// Prices looked up once, in the order of the catalogue's rows.
struct Book {
    std::string name;                          ///< shown with every price
    std::array<double, item_count> amounts{};  ///< pounds net, or hours, metres, per cent
    std::vector<PoundsPerMetre> cables;        ///< beside catalogue.cables
    std::vector<Pounds> devices;               ///< beside catalogue.devices; one pole
    std::vector<PoundsPerMetre> separates;     ///< beside catalogue.separates

    double amount(Item item) const { return amounts[static_cast<std::size_t>(item)]; }
};

/// Reads a book and checks that it prices every cable and device of `catalogue`, and all labour.
Outcome<Book> read_book(std::string_view name, std::string_view text,
                        const tables::Catalogue& catalogue);

}  // namespace toft::price
