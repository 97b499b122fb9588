#pragma once
// A price book: items with a net price or a quantity each, from text `item,unit,net_gbp,note`. The
// book that comes with the program is invented and only shows the shape.

#include "base/outcome.h"
#include "base/units.h"
#include "price/row.h"
#include "tables/catalogue.h"

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace toft::price {

/// Prices looked up once, in the order of the catalogue's rows.
struct Prices {
    std::array<double, item_count> amounts{};  ///< pounds net, or hours, metres, per cent
    std::vector<PoundsPerMetre> cables;        ///< beside catalogue.cables
    std::vector<Pounds> devices;  ///< beside catalogue.devices; one pole, of a breaker up to 40 A
    std::vector<PoundsPerMetre> separates;  ///< beside catalogue.separates
};

/// With the book's margin in every price.
struct Book : Prices {
    std::string name;  ///< shown with every price
    Prices low, high;  ///< between which each may lie; the same where the book gives no range
    Prices cost;       ///< without the margin

    double amount(Item item) const { return amounts[static_cast<std::size_t>(item)]; }

    /// One of it as a line of a price, to the penny.
    Pounds one(Item item) const { return penny(pounds(amount(item))); }

    /// Net pounds for each unit of that row.
    double price(const BookRow& row) const {
        switch (row.of) {
            case BookRow::Of::cable:
                return cables[row.index].number();
            case BookRow::Of::separate:
                return separates[row.index].number();
            case BookRow::Of::device:
                return devices[row.index].number();
            case BookRow::Of::item:
                break;
        }
        return amounts[row.index];
    }
};

/// The book with every price at its low end, or at its high.
Book at_low(const Book& book);
Book at_high(const Book& book);

/// Reads a book and checks that it prices every cable and device of `catalogue`, and all labour.
Outcome<Book> read_book(std::string_view name, std::string_view text,
                        const tables::Catalogue& catalogue);

}  // namespace toft::price
