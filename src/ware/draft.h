#pragma once
// The rows that one run brings into the list, before rows that are alike are merged.

#include "ware/list.h"

#include <string>
#include <vector>

namespace toft::ware {

/// What a row is bought by, so that its order can be worded once all of it is together.
enum class Bought { as_counted, cut, reel, coupled, fixed, sand };

/// Item that the bill counts circuits by, as the price book has it.
inline constexpr const char* circuit_item = "30 mA RCBO";

struct Draft {
    Row row;
    Bought bought = Bought::as_counted;
    std::vector<Metres> pieces = {};      ///< of what is cut
    std::vector<std::string> where = {};  ///< beside each piece: the building it leads to
    double tonnes = 0;                    ///< of sand
    int count = 0;                        ///< of what is fixed: cleats or clips
};

/// One or more for each material line of the part's bill.
std::vector<Draft> drafts_of(const tables::Catalogue& catalogue, const site::Job& job,
                             const RunBill& part);

}  // namespace toft::ware
