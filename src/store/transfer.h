#pragma once
// Jobs out of a store and into another as one JSON text, `toft-store/1`: whole histories, photos
// and papers in base64 (RFC 4648). Settings stay behind; the own price book goes along.

#include "base/outcome.h"
#include "store/act.h"
#include "store/settings.h"

#include <cstddef>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace toft::store {

inline constexpr std::size_t largest_transfer = 256u << 20;  ///< bytes of one text, out or in
inline constexpr std::size_t most_values = 3'000'000;        ///< of JSON in one text, out or in

/// One job. Faults: `no-such-job`, `too-large`.
Outcome<std::string> export_job(Store& store, const std::string& id);

/// Every job, the archived too, and the own price book. Faults: `too-large`: export job by job.
Outcome<std::string> export_all(Store& store);

/// What became of one job of a text.
struct Imported {
    std::string id;      ///< in this store
    std::string was_id;  ///< in the text
    std::string title;
    std::string says;  ///< "new here", "was here already", …
    bool written = false;
};

/// Takes in all of a text or nothing. A job that is here with all those revisions gets only the
/// photos, readings and papers it lacks (one that was deleted here comes back); one that went on
/// only in the text is carried on; one that went on differently here and there comes in under a new
/// id of `fresh_id`, with a revision that says so. The own price book is taken only where there is
/// none. Faults, all at once, with pointers into the text: those of the reader, `format`,
/// `missing`, `bad-id`, `bad-revision`, `bad-time`, `bad-author`, `base64`, those of adding photos,
/// readings and papers, and those of `book_faults`, which says what ails a price book.
Outcome<std::vector<Imported>> import_text(
    Store& store, std::string_view text, const Act& act,
    const std::function<std::string()>& fresh_id,
    const std::function<Faults(const OwnPrices&)>& book_faults = {});

/// A random id of RFC 4122's version 4 from 128 random bits.
std::string id_of(unsigned long long high, unsigned long long low);

}  // namespace toft::store
