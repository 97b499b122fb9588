#pragma once
// A price book: items with a net price or a quantity each, from a table of comma-separated cells.
// The book that comes with the program is invented and only shows the shape. How to keep one:
// docs/price-book.md.

#include "base/outcome.h"
#include "base/units.h"
#include "price/row.h"
#include "tables/catalogue.h"

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace toft::price {

/// Prices looked up once, in the order of the catalogue's rows. Not a number where the book has
/// none; nothing that needs such a price may be offered (price/offer.h).
struct Prices {
    std::array<double, item_count> amounts{};  ///< pounds net, or hours, metres, per cent
    std::vector<PoundsPerMetre> cables;        ///< beside catalogue.cables
    std::vector<Pounds> devices;  ///< beside catalogue.devices; one pole, of a breaker up to 40 A
    std::vector<PoundsPerMetre> separates;  ///< beside catalogue.separates

    /// Net pounds for each unit of that row; of hours, metres and the like so many.
    double price(const BookRow& row) const;
};

/// With the book's margin in every price.
struct Book : Prices {
    std::string name;          ///< shown with every price
    std::size_t rows = 0;      ///< that were read, tax and margin aside
    std::size_t invented = 0;  ///< of these, whose note begins with that word
    Prices low, high;  ///< between which each may lie; the same where the book gives no range
    Prices cost;       ///< without the margin

    double amount(Item item) const { return amounts[static_cast<std::size_t>(item)]; }

    /// One of it as a line of a price, to the penny.
    Pounds one(Item item) const { return penny(pounds(amount(item))); }
};

/// The book with every price at its low end, or at its high.
Book at_low(const Book& book);
Book at_high(const Book& book);

struct BookRead {
    Book book;  ///< complete where there are no faults
    Faults faults;
    bool readable = false;  ///< as a table, whatever its rows say
};

/// Reads a book of columns item, unit, net_gbp and perhaps low_gbp, high_gbp, note, in any order.
/// At fault: what is no price, an item that is not known, has another unit or stands twice, a
/// price outside its own range; an item missing that every job may need. Cables, separate
/// conductors and devices may be missing, but for the thickest separate conductor.
BookRead look_at_book(std::string_view name, std::string_view text,
                      const tables::Catalogue& catalogue);

/// The book, or all its faults.
Outcome<Book> read_book(std::string_view name, std::string_view text,
                        const tables::Catalogue& catalogue);

}  // namespace toft::price
