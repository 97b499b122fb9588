#pragma once
// The cable that already lies where a run is to go: what it is, what feeds it, how it was found and
// what it reads. It covers the whole run.

#include "base/units.h"
#include "site/device.h"
#include "site/fact.h"
#include "site/words.h"

#include <optional>
#include <string>

namespace toft::site {

struct Existing {
    std::string family;
    int cores = 2;
    SquareMillimetres live;
    std::optional<NamedDevice> device;  ///< at its head
    std::optional<FedFrom> fed_from;    ///< where that stands
    std::optional<Condition> condition;
    std::string colours;         ///< of its cores: those of today, or red and black; may be empty
    std::optional<int> laid_in;  ///< year
    Fact<Ohms> insulation;       ///< between any two conductors, the least reading
    Fact<Ohms> r1_r2;            ///< line and protective conductor, joined at the far end
    std::optional<ReadThrough> through;
    Fact<Ohms> r1_rn;   ///< line and neutral, joined at the far end
    Fact<Ohms> zs;      ///< earth fault loop at the far end
    Fact<Ohms> armour;  ///< of the armour, end to end

    friend bool operator==(const Existing&, const Existing&) = default;
};

}  // namespace toft::site
