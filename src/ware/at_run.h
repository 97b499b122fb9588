#pragma once
// Where on a run a line of its bill belongs, and the cable that lies there.

#include "ware/list.h"

#include <string>
#include <vector>

namespace toft::ware {

/// Looks at what it was given; both must outlive it.
class AtRun {
public:
    AtRun(const tables::Catalogue& catalogue, const RunBill& part) : c_(catalogue), part_(part) {}

    /// The stretch that a line counts by (0 for the only one); null where there is none.
    const answer::StretchAnswer* stretch(int number) const;

    /// The stretch that the leg, counted from 1, is part of; null where there is none.
    const answer::StretchAnswer* at_leg(int leg) const;

    /// Its cable in the tables; null for no stretch or a cable they do not know.
    const tables::Cable* cable(const answer::StretchAnswer* stretch) const;

    bool in_duct(int leg) const;

    /// Diameters of what is pulled into one duct of the leg: the cable, and the conductor beside it
    /// (0 where it is not known). Empty where no cable is known.
    std::vector<Metres> pulled_in(int leg) const;

    /// "for 19.5 mm", or by its cores where the diameter is not known; empty where no cable is.
    std::string thickness_words(int leg) const;

private:
    const tables::Catalogue& c_;
    const RunBill& part_;
};

/// Cables of the stretch that are bought; 0 where the one that is there stays.
int bought_of(const answer::StretchAnswer& stretch);

}  // namespace toft::ware
