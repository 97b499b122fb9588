#pragma once
// In which sold lengths pieces are bought, and what is left over.

#include "tables/ware.h"

#include <string>
#include <vector>

namespace toft::ware {

/// Whole drums or coils of one length.
struct Drums {
    Metres sold;  ///< of each; 0 where no sold length holds the longest piece
    int count = 0;
    Metres left;  ///< over from all together
};

/// The fewest metres that the pieces can be cut from, none of them joined.
Drums drums_for(const std::vector<tables::SoldRow>& sold, const std::string& what,
                std::vector<Metres> pieces);

/// The same for what may be coupled.
Drums coils_for(const std::vector<tables::SoldRow>& sold, const std::string& what, Metres total);

/// "2 drums of 50 m, 12 m left over"; `noun` for one of them.
std::string drums_words(const Drums& drums, const char* noun);

/// The next whole metre.
Metres whole_metres(Metres length);

}  // namespace toft::ware
