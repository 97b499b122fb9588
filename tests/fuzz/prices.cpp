// Any bytes as a price book: a book or faults, and a book that is taken prices what it says.

#include "fuzz/fuzzing.h"
#include "price/listing.h"

#include <cmath>
#include <cstdint>
#include <string_view>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    using namespace toft;
    const std::string_view text(reinterpret_cast<const char*>(bytes), size);
    const price::BookRead read = price::look_at_book("a book", text, fuzz::catalogue());
    for (const Fault& fault : read.faults) {
        fuzz::require(!fault.code.empty() && !fault.says.empty(), "a fault says something");
    }
    if (!read.faults.empty()) return 0;
    for (std::size_t i = 0; i < price::item_count; ++i) {
        const double amount = read.book.amounts[i];
        fuzz::require(std::isfinite(amount) && amount >= 0, "every job's items are priced");
    }
    for (const auto& row : price::listed(read.book, fuzz::catalogue())) {
        fuzz::require(!row.priced || (row.low <= row.net && row.net <= row.high),
                      "a price lies in its own range");
    }
    return 0;
}
