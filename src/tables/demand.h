#pragma once
// What the tables know of demand: published allowances by kind of load and premises, which load a
// circuit or a building counts as, the current a circuit has when nobody states one, and what
// tails carry.

#include "base/citation.h"
#include "base/units.h"

#include <string>
#include <string_view>
#include <vector>

namespace toft::tables {

/// Words of `load` for circuits that no published row covers.
inline constexpr std::string_view load_in_full = "in full";
inline constexpr std::string_view load_generation = "generation";
inline constexpr std::string_view load_storage = "storage battery";

/// One cell of the published table: `first` amperes count whole, of the rest `largest`, `second`
/// and `rest` say how much of the largest circuit, the second and all others counts; `extra` comes
/// on top for each circuit.
struct Allowance {
    std::string load;
    std::string premises;
    std::string symbol;  ///< the load as one word, for the working
    std::string cell;    ///< load and premises as one word
    Cited<Amperes> first;
    Cited<double> largest;  ///< 0 to 1; the same as the other two where `first` is not 0
    Cited<double> second;
    Cited<double> rest;
    Cited<Amperes> extra;
};

/// Which load a kind of circuit counts as.
struct LoadOfKind {
    std::string kind;
    std::string load;
    bool alone = false;  ///< its largest circuit counts whole, whatever the row allows
    const Citation* citation = nullptr;
};

/// The rating a circuit of that kind usually has.
struct UsualRating {
    std::string kind;
    Cited<Amperes> rating;
};

/// Which column of the published table a use of a building falls in.
struct PremisesOfUse {
    std::string use;
    std::string premises;
};

/// How many hours at its full demand would use as much energy as a building of that use does in a
/// year.
struct YearlyHours {
    std::string use;
    Cited<double> hours;
};

/// What tails of that section are trusted with.
struct TailsRating {
    SquareMillimetres section;
    Cited<Amperes> rating;
};

struct Demand {
    std::vector<Allowance> allowances;
    std::vector<LoadOfKind> loads;
    std::vector<UsualRating> usual;
    std::vector<PremisesOfUse> premises;
    std::vector<YearlyHours> yearly;
    std::vector<TailsRating> tails;  ///< thin to thick
};

/// The published cell, or null where nothing is published.
const Allowance* find_allowance(const Demand& demand, std::string_view load,
                                std::string_view premises);

/// What that kind of circuit counts as; the tables hold every kind.
const LoadOfKind& load_of_kind(const Demand& demand, std::string_view kind);

/// The usual rating of that kind, or null.
const UsualRating* find_usual(const Demand& demand, std::string_view kind);

/// The column of a building put to that use; that of a household where the use is not listed.
const std::string& premises_of(const Demand& demand, std::string_view use);

/// The row of a building put to that use; that of other uses where it is not listed.
const YearlyHours& yearly_hours(const Demand& demand, std::string_view use);

/// The row of the thickest tails not above `section`; null for tails thinner than any.
const TailsRating* find_tails(const Demand& demand, SquareMillimetres section);

}  // namespace toft::tables
