#pragma once
// Tables and price books, read once and kept from call to call.

#include "answer/answer.h"
#include "base/outcome.h"
#include "tables/embedded.h"

#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace toft::request {

/// Tables and price book. What the book does not price the tables do not offer.
struct Stock {
    tables::Catalogue catalogue;
    price::Book book;
};

/// How much of the tables is read: tables::load_catalogue, or less.
using Load = Outcome<tables::Catalogue> (*)(tables::EmbeddedFiles);

/// One call at a time: whoever serves several at once gives each thread a bench of its own.
class Bench {
public:
    /// Faults only where the program's own tables are broken.
    static Outcome<Bench> load(Load read = tables::load_catalogue);

    /// With the invented book, or with that of `prices`: the last one is kept, so that asking with
    /// the same text again reads nothing.
    const Stock* stock(std::string_view name, const std::optional<std::string>& prices,
                       Faults& faults);

    /// The invented one.
    const Stock& stock() const { return *own_; }

private:
    explicit Bench(Load read) : load_(read) {}
    /// The tables that the program carries with the book of that text.
    Outcome<Stock> stock_of(std::string_view name, std::string_view prices) const;

    Load load_;
    std::unique_ptr<Stock> own_;
    std::unique_ptr<Stock> other_;
    std::string name_, text_;  ///< of the other
};

}  // namespace toft::request
